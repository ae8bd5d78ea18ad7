import type { From, StripColumns } from './unrolled-grid';

/**
 * Cuts the columns of a surface into about equal strips, in drawing order from the top: read left to right and then down,
 * they follow on each other as in one long drawing. A cut moves up to a quarter of a strip to where it costs least.
 * `costOf(column)` is the cost of a cut between this column and the next: 0 at a zone's border, more across runs. `widest`:
 * columns of a strip at most, where so many strips have room for all columns.
 */
export function cutStrips(
  columns: number,
  count: number,
  from: From,
  costOf: (column: number) => number,
  widest = columns,
): readonly StripColumns[] {
  const strips: StripColumns[] = [];
  let first = 1;
  for (let left = Math.max(1, Math.min(count, columns)); left > 0 && first <= columns; left--) {
    const rest = columns - first + 1;
    const bounds = { least: columns - widest * (left - 1), most: Math.min(columns - 1, first + widest - 1) };
    const last = left === 1 ? columns : bestCut(first, Math.round(rest / left), bounds, costOf);
    strips.push({ firstColumn: first, columns: last - first + 1 });
    first = last + 1;
  }
  return from === 'inside' ? strips : strips.reverse();
}

/** Column after which to cut, from `bounds.least` to `bounds.most`. */
function bestCut(
  first: number,
  wanted: number,
  bounds: { readonly least: number; readonly most: number },
  costOf: (column: number) => number,
): number {
  const middle = first + wanted - 1;
  const span = Math.floor(wanted / 4);
  let best = Math.max(Math.min(middle, bounds.most), bounds.least);
  let least = Number.POSITIVE_INFINITY;
  for (let last = Math.max(first, middle - span, bounds.least); last <= Math.min(bounds.most, middle + span); last++) {
    const cost = costOf(last) * (span + 1) + Math.abs(last - middle);
    if (cost < least) {
      least = cost;
      best = last;
    }
  }
  return best;
}
