import type { SurfaceSet, SurfaceTable } from './surface-table';

/** Name of a column: its surface's letter where there are several, and its number. */
export function columnName(set: SurfaceSet, surface: Pick<SurfaceTable, 'letter'>, column: number): string {
  return set.surfaces.length === 1 ? `C${column}` : `${surface.letter} C${column}`;
}
