/** Where a zone starts on its surface. */
interface ZoneCorner {
  readonly firstColumn: number;
  readonly firstRow: number;
}

/**
 * Which zones of one surface share a node, at most so many (null: all), as indexes into `zones`. Neighbours of one row of zones
 * come together first; where more than a row may, whole rows. As few nodes as that allows, as even as they go.
 */
export function groupZones(zones: readonly ZoneCorner[], most: number | null): readonly (readonly number[])[] {
  if (zones.length === 0) return [];
  if (most === null) return [zones.map((_, i) => i)];
  const lefts = ranks(zones.map(({ firstColumn }) => firstColumn));
  const feet = ranks(zones.map(({ firstRow }) => firstRow));
  const isRow = most >= lefts.size;
  const wide = isRow ? lefts.size : evenly(lefts.size, most);
  const high = isRow ? evenly(feet.size, Math.floor(most / lefts.size)) : 1;
  const groups = new Map<number, number[]>();
  for (const [i, { firstColumn, firstRow }] of zones.entries()) {
    const across = Math.floor(lefts.get(firstColumn)! / wide);
    const up = Math.floor(feet.get(firstRow)! / high);
    const key = up * lefts.size + across;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [i]);
    else group.push(i);
  }
  return [...groups.values()];
}

/** Every number with its place, from 0, among those that differ. */
function ranks(numbers: readonly number[]): ReadonlyMap<number, number> {
  const inOrder = [...new Set(numbers)].sort((a, b) => a - b);
  return new Map(inOrder.map((number, place) => [number, place]));
}

/** Size of the groups when things are shared out to as few groups as hold at most so many each. */
function evenly(things: number, most: number): number {
  return Math.ceil(things / Math.ceil(things / most));
}
