import type { PlacedPanelType, SurfaceTable } from './surface-table';

/** A table with room for `count` panels on a lattice of `columns` x `rows`, every place still without a panel. */
export function newTable(
  surface: { readonly id: string; readonly letter: string; readonly name: string },
  kind: SurfaceTable['kind'],
  types: readonly PlacedPanelType[],
  size: { readonly count: number; readonly columns: number; readonly rows: number },
  canvas: { readonly width: number; readonly height: number },
): SurfaceTable {
  const { count, columns, rows } = size;
  return {
    surfaceId: surface.id,
    letter: surface.letter,
    name: surface.name,
    kind,
    count,
    columns,
    rows,
    types,
    column: new Uint16Array(count),
    row: new Uint16Array(count),
    type: new Uint8Array(count),
    xMm: new Float64Array(count),
    yMm: new Float64Array(count),
    zMm: new Float64Array(count),
    headingDeg: new Float64Array(count),
    canvasX: new Uint32Array(count),
    canvasY: new Uint32Array(count),
    canvasWidth: canvas.width,
    canvasHeight: canvas.height,
    at: new Int32Array(columns * rows).fill(-1),
  };
}
