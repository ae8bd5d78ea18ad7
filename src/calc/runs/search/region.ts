import type { RunLimits, WiringGrid } from '../wiring-grid';

/** Panels that the search wires together, numbered 0 .. size - 1 ('cells'), with all it asks of them at hand. */
export interface Region {
  readonly size: number;
  /** Place on the zone's grid of every cell. */
  readonly places: Int32Array;
  readonly column: Int32Array;
  readonly row: Int32Array;
  /** Four a cell: the cell above, to the right, below, to the left; -1 where there is none in the region. */
  readonly neighbours: Int32Array;
  readonly pixels: Float64Array;
  /** Edges on the canvas. */
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly top: Float64Array;
  readonly bottom: Float64Array;
  /** 1 where the panel is too high to be an entry. */
  readonly outOfReach: Uint8Array;
  readonly limits: RunLimits;
}

/** `places` must be present and without repeats; their order becomes the order of cells. */
export function regionOf(grid: WiringGrid, limits: RunLimits, places: Int32Array): Region {
  const { columns, rows } = grid;
  const size = places.length;
  const cellAt = new Int32Array(columns * rows).fill(-1);
  for (let cell = 0; cell < size; cell++) cellAt[places[cell]!] = cell;
  const region = {
    size,
    places,
    column: new Int32Array(size),
    row: new Int32Array(size),
    neighbours: new Int32Array(size * 4).fill(-1),
    pixels: new Float64Array(size),
    left: new Float64Array(size),
    right: new Float64Array(size),
    top: new Float64Array(size),
    bottom: new Float64Array(size),
    outOfReach: new Uint8Array(size),
    limits,
  };
  for (let cell = 0; cell < size; cell++) {
    const place = places[cell]!;
    const row = place % rows;
    const column = (place - row) / rows;
    region.column[cell] = column;
    region.row[cell] = row;
    if (row + 1 < rows) region.neighbours[cell * 4] = cellAt[place + 1]!;
    if (column + 1 < columns) region.neighbours[cell * 4 + 1] = cellAt[place + rows]!;
    if (row > 0) region.neighbours[cell * 4 + 2] = cellAt[place - 1]!;
    if (column > 0) region.neighbours[cell * 4 + 3] = cellAt[place - rows]!;
    region.pixels[cell] = grid.pixelWidth[place]! * grid.pixelHeight[place]!;
    region.left[cell] = grid.pixelLeft[place]!;
    region.right[cell] = grid.pixelLeft[place]! + grid.pixelWidth[place]!;
    region.top[cell] = grid.pixelTop[place]!;
    region.bottom[cell] = grid.pixelTop[place]! + grid.pixelHeight[place]!;
    region.outOfReach[cell] = grid.entryHeightMm[place]! > limits.reachMm ? 1 : 0;
  }
  return region;
}
