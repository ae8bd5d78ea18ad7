import type { Band } from './wall';

/** Rows of all bands of a wall. */
export function bandRows(bands: readonly Pick<Band, 'rows'>[]): number {
  return bands.reduce((sum, band) => sum + band.rows, 0);
}
