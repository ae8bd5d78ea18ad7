import type { Label, LabelSeries, Stroke } from './drawing';
import { LineBuilder } from './line-builder';
import { groundMm, type UnrolledGrid } from './unrolled-grid';

/** Edge of the drawn surface from which its home runs come. */
export type EdgeSide = 'left' | 'right' | 'bottom' | 'top';

/** First panel of a chain: where its line begins, and its tag. */
export interface HomeRunEntry {
  readonly xMm: number;
  readonly yMm: number;
  readonly strip: number;
  readonly column: number;
  readonly row: number;
  readonly tag: string;
  /** Said where the whole tag has no room; null: then nothing. */
  readonly shortTag: string | null;
  readonly number: number;
}

/** Lanes for cables within one panel's width, as shares of it; more cables than these lie evenly between the outermost. */
const upright = { shares: [0.26, 0.42, 0.12, 0.34, 0.19], from: 0.12, until: 0.42 } as const;
/** Within its height, where they come from the side: between the panel's name and the line of its run, in order from above. */
const level = { only: 0.36, from: 0.32, until: 0.44 } as const;
/** Rows of tags in the space beside the surface, as shares of it: where the first stands, its usual step, where the last may. */
const tagRows = { first: 0.2, step: 0.33, last: 0.86 } as const;

function laneShareOf(k: number, count: number, isUpright: boolean): number {
  if (!isUpright && count === 1) return level.only;
  if (isUpright && count <= upright.shares.length) return upright.shares[k]!;
  const { from, until } = isUpright ? upright : level;
  return from + ((until - from) * k) / (count - 1);
}

/** However many cables come to one panel's width, their tags stay off what is drawn beyond the space. */
function tagShareOf(k: number, count: number): number {
  const step = Math.min(tagRows.step, (tagRows.last - tagRows.first) / Math.max(1, count - 1));
  return tagRows.first + step * k;
}

/** Home runs as stubs: from a tag outside the edge, along a lane, to the entry's panel and across to its mark. */
export function drawHomeRuns(
  grid: UnrolledGrid,
  entries: readonly HomeRunEntry[],
  side: EdgeSide,
): { readonly stroke: Stroke; readonly tags: readonly LabelSeries[] } {
  const lines = new LineBuilder();
  const rows: { label: Label; number: number }[][] = [];
  const isUpright = side === 'bottom' || side === 'top';
  const spaceMm = isUpright ? grid.belowMm : grid.besideMm;
  const sign = side === 'bottom' || side === 'right' ? 1 : -1;

  for (const group of groupedByLane(entries, isUpright)) {
    // Deepest first: its lane is the outermost, so that the branch of a nearer entry crosses no other cable.
    group.sort((a, b) => sign * (isUpright ? a.yMm - b.yMm : a.xMm - b.xMm));
    group.forEach((entry, k) => {
      const laneShare = laneShareOf(k, group.length, isUpright);
      const edge = edgeMm(grid, entry.strip, side);
      const tagAt = edge + sign * spaceMm * tagShareOf(k, group.length);
      const lane = laneMm(grid, entry, isUpright, laneShare);
      const point = (along: number, across: number): [number, number] =>
        isUpright ? [along, across] : [across, along];
      lines.moveTo(...point(lane, tagAt));
      lines.lineTo(...point(lane, isUpright ? entry.yMm : entry.xMm));
      lines.lineTo(entry.xMm, entry.yMm);
      const [xMm, yMm] = point(lane, tagAt);
      // Lines that pass on to tags farther out lie under this one: its tag stands above them all.
      const asideLine = k < group.length - 1 ? -1 : 0;
      rows[k] ??= [];
      rows[k].push({
        label: {
          text: entry.tag,
          ...(entry.shortTag === null ? {} : { short: entry.shortTag }),
          xMm,
          yMm,
          asideX: isUpright ? 0 : sign,
          asideY: isUpright ? sign : asideLine,
          gap: 0.15,
        },
        number: entry.number,
      });
    });
  }
  return {
    stroke: {
      layer: 'homeruns',
      pen: 'accent',
      weight: 'medium',
      dash: 'solid',
      leastScale: 7 / grid.columnWidthMm,
      lines: lines.build(),
    },
    tags: rows.map((row) => ({
      layer: 'homeruns',
      pen: 'accent',
      size: 'small',
      leastScale: 7 / grid.columnWidthMm,
      count: row.length,
      at: (i) => row[i]!.label,
      // Thinned to the 1st, 6th, 11th ... of a zone rather than to the 5th and 10th.
      numberOf: (i) => row[i]!.number,
    })),
  };
}

/** Entries that share a column (or a row, where cables come from the side), one list each. */
function groupedByLane(entries: readonly HomeRunEntry[], upright: boolean): Iterable<HomeRunEntry[]> {
  const groups = new Map<string, HomeRunEntry[]>();
  for (const entry of entries) {
    const key = `${entry.strip} ${upright ? entry.column : entry.row}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [entry]);
    else group.push(entry);
  }
  return groups.values();
}

function edgeMm(grid: UnrolledGrid, strip: number, side: EdgeSide): number {
  const placed = grid.strips[strip]!;
  if (side === 'bottom') return groundMm(grid, placed);
  if (side === 'top') return placed.topMm;
  return side === 'left' ? 0 : placed.widthMm;
}

function laneMm(grid: UnrolledGrid, entry: HomeRunEntry, upright: boolean, share: number): number {
  if (upright) {
    const left = Math.floor(entry.xMm / grid.columnWidthMm) * grid.columnWidthMm;
    return left + share * grid.columnWidthMm;
  }
  const strip = grid.strips[entry.strip]!;
  const top = strip.zeroMm - grid.edgesMm[entry.row]!;
  return top + share * (grid.edgesMm[entry.row]! - grid.edgesMm[entry.row - 1]!);
}
