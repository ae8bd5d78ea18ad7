import type { RunLimits, WiringGrid } from '../../../../src/calc/runs/wiring-grid';

/** Panels of 216 x 216 pixels and 0.5 m, standing on the floor; `isThere` leaves holes. */
export function block(columns: number, rows: number, isThere: (place: number) => boolean = () => true): WiringGrid {
  const size = columns * rows;
  const each = (figure: (column: number, row: number) => number) =>
    Array.from({ length: size }, (_, place) => figure(Math.floor(place / rows), place % rows));
  return {
    columns,
    rows,
    present: Uint8Array.from({ length: size }, (_, place) => (isThere(place) ? 1 : 0)),
    pixelLeft: Uint32Array.from(each((column) => column * 216)),
    pixelTop: Uint32Array.from(each((_, row) => (rows - 1 - row) * 216)),
    pixelWidth: new Uint32Array(size).fill(216),
    pixelHeight: new Uint32Array(size).fill(216),
    entryHeightMm: Float64Array.from(each((_, row) => row * 500)),
    columnPitchMm: 500,
    rowPitchMm: 500,
  };
}

/** A port that takes so many such panels. */
export const aPort = (panels: number, counting: RunLimits['counting'] = 'panels', reachMm = 2100): RunLimits => ({
  usablePixels: panels * 216 * 216,
  panelsMost: 1000,
  counting,
  reachMm,
});
