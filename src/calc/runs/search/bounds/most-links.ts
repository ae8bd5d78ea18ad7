import type { Region } from '../region';

/** Cells above which the bound is not worked out. */
const CELLS_MOST = 3000;

/**
 * Most links that can be made between neighbours with no cell in more than two: runs have no more, and a cover of n panels by
 * k runs has n - k. Neighbours differ in the parity of column plus row, so this is a flow from even cells to odd ones.
 * Null where the region is too large; not counted on above `enough`.
 */
export function mostLinks(region: Region, enough = Number.POSITIVE_INFINITY): number | null {
  const { size, neighbours } = region;
  if (size > CELLS_MOST) return null;
  const isEven = (cell: number) => (region.column[cell]! + region.row[cell]!) % 2 === 0;
  const linked = new Uint8Array(size * 4);
  const spare = new Uint8Array(size).fill(2);
  const seen = new Int32Array(size).fill(-1);
  const link = (cell: number, side: number, on: 0 | 1) => {
    linked[cell * 4 + side] = on;
    linked[neighbours[cell * 4 + side]! * 4 + ((side + 2) & 3)] = on;
  };
  let links = 0;
  let round = 0;
  // From an even cell over a link that is not there to an odd one; on from there over one that is there.
  const augment = (first: number): boolean => {
    const path: { cell: number; side: number }[] = [{ cell: first, side: -1 }];
    seen[first] = round;
    while (path.length > 0) {
      const top = path[path.length - 1]!;
      top.side++;
      if (top.side === 4) {
        path.pop();
        continue;
      }
      const even = isEven(top.cell);
      const to = neighbours[top.cell * 4 + top.side]!;
      if (to < 0 || seen[to] === round || linked[top.cell * 4 + top.side] !== (even ? 0 : 1)) continue;
      seen[to] = round;
      if (even && spare[to]! > 0) {
        for (const { cell, side } of path) link(cell, side, isEven(cell) ? 1 : 0);
        spare[to]!--;
        return true;
      }
      path.push({ cell: to, side: -1 });
    }
    return false;
  };
  for (let cell = 0; cell < size; cell++) {
    if (!isEven(cell)) continue;
    while (spare[cell]! > 0) {
      if (links >= enough) return links;
      round++;
      if (!augment(cell)) break;
      spare[cell]!--;
      links++;
    }
  }
  return links;
}
