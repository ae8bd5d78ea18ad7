import type { PlacedPanelType, SurfaceSet, SurfaceTable } from './surface-table';

/** One panel as a record, made only for a picked panel or a visible row. */
export interface PanelRecord {
  /** Number through all surfaces. */
  readonly index: number;
  readonly surface: SurfaceTable;
  /** 'A C38 R9'; the letter is dropped where the stage has one surface only. */
  readonly name: string;
  readonly column: number;
  readonly row: number;
  readonly type: PlacedPanelType;
}

/** Name of a panel: surface letter, column, row; no letter with only one surface. */
export function panelName(set: SurfaceSet, surface: SurfaceTable, column: number, row: number): string {
  const place = `C${column} R${row}`;
  return set.surfaces.length === 1 ? place : `${surface.letter} ${place}`;
}

/** The panel with this number, or null where there is none. */
export function panelAt(set: SurfaceSet, index: number): PanelRecord | null {
  if (!Number.isInteger(index) || index < 0 || index >= set.total) return null;
  let s = set.surfaces.length - 1;
  while (s > 0 && set.offsets[s]! > index) s--;
  const surface = set.surfaces[s]!;
  const local = index - set.offsets[s]!;
  const column = surface.column[local]!;
  const row = surface.row[local]!;
  return {
    index,
    surface,
    name: panelName(set, surface, column, row),
    column,
    row,
    type: surface.types[surface.type[local]!]!,
  };
}
