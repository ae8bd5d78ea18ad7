import type { RunLimits, WiringGrid } from '../wiring-grid';

/** The zone as seen from the other side: columns and canvas turned left to right. */
export function mirrorGrid(grid: WiringGrid): WiringGrid {
  const { columns, rows } = grid;
  const edge = canvasEdges(grid);
  const mirrored = {
    ...grid,
    present: new Uint8Array(grid.present.length),
    pixelLeft: new Uint32Array(grid.present.length),
    pixelTop: new Uint32Array(grid.present.length),
    pixelWidth: new Uint32Array(grid.present.length),
    pixelHeight: new Uint32Array(grid.present.length),
    entryHeightMm: new Float64Array(grid.present.length),
  };
  for (let place = 0; place < grid.present.length; place++) {
    const to = mirrorPlace(columns, rows, place);
    mirrored.present[to] = grid.present[place]!;
    mirrored.pixelLeft[to] = edge - grid.pixelLeft[place]! - grid.pixelWidth[place]!;
    mirrored.pixelTop[to] = grid.pixelTop[place]!;
    mirrored.pixelWidth[to] = grid.pixelWidth[place]!;
    mirrored.pixelHeight[to] = grid.pixelHeight[place]!;
    mirrored.entryHeightMm[to] = grid.entryHeightMm[place]!;
  }
  return mirrored;
}

export function mirrorPlace(columns: number, rows: number, place: number): number {
  const row = place % rows;
  return (columns - 1) * rows - (place - row) + row;
}

/**
 * Below 0: the zone comes before its mirror image, in an order of which only this matters, that it is one; 0: they are equal.
 * Where panels are on the canvas counts only where the rectangle round them does: narrow panels of a column stand at its left.
 */
export function compareWithMirror(grid: WiringGrid, counting: RunLimits['counting']): number {
  const { columns, rows, present, pixelLeft, pixelTop, pixelWidth, pixelHeight, entryHeightMm } = grid;
  const edge = canvasEdges(grid);
  for (let place = 0; place < present.length; place++) {
    const other = mirrorPlace(columns, rows, place);
    const difference =
      present[place]! - present[other]! ||
      (present[place] === 0
        ? 0
        : pixelWidth[place]! - pixelWidth[other]! ||
          pixelHeight[place]! - pixelHeight[other]! ||
          (counting === 'rectangle'
            ? pixelTop[place]! - pixelTop[other]! || pixelLeft[place]! - (edge - pixelLeft[other]! - pixelWidth[other]!)
            : 0) ||
          entryHeightMm[place]! - entryHeightMm[other]!);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** Left edge plus right edge of the panels' canvas: what a mirrored left edge and its old right edge add up to. */
function canvasEdges(grid: WiringGrid): number {
  let left = Number.POSITIVE_INFINITY;
  let right = 0;
  for (let place = 0; place < grid.present.length; place++) {
    if (grid.present[place] === 0) continue;
    left = Math.min(left, grid.pixelLeft[place]!);
    right = Math.max(right, grid.pixelLeft[place]! + grid.pixelWidth[place]!);
  }
  return left === Number.POSITIVE_INFINITY ? 0 : left + right;
}
