import type { Region } from './region';

/** A region of some of another one's cells, which must not repeat, numbered in this order. */
export function subRegion(region: Region, cells: Int32Array): Region {
  const numberOf = new Int32Array(region.size).fill(-1);
  const neighbours = new Int32Array(cells.length * 4);
  cells.forEach((cell, i) => {
    numberOf[cell] = i;
  });
  cells.forEach((cell, i) => {
    for (let side = 0; side < 4; side++) {
      const to = region.neighbours[cell * 4 + side]!;
      neighbours[i * 4 + side] = to < 0 ? -1 : numberOf[to]!;
    }
  });
  const whole = (figures: Int32Array) => cells.map((cell) => figures[cell]!);
  const figures = (all: Float64Array) => Float64Array.from(cells, (cell) => all[cell]!);
  return {
    size: cells.length,
    places: whole(region.places),
    column: whole(region.column),
    row: whole(region.row),
    neighbours,
    pixels: figures(region.pixels),
    left: figures(region.left),
    right: figures(region.right),
    top: figures(region.top),
    bottom: figures(region.bottom),
    outOfReach: Uint8Array.from(cells, (cell) => region.outOfReach[cell]!),
    limits: region.limits,
  };
}
