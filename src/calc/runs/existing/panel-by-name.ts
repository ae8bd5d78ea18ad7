import type { SurfaceSet } from '../../surfaces/surface-table';

/**
 * The number of the panel that a full name stands for: 'A C38 R9', the letter dropped or not where there is one surface only.
 * Case and spacing do not matter. -1 where no panel has that name.
 */
export function panelByName(set: SurfaceSet, name: string): number {
  const parts = /^\s*(?:([A-Z])\s*)?C\s*(\d{1,6})\s*R\s*(\d{1,6})\s*$/i.exec(name);
  if (parts === null) return -1;
  const letter = parts[1]?.toUpperCase();
  const index =
    letter === undefined ? set.surfaces.length - 1 : set.surfaces.findIndex((surface) => surface.letter === letter);
  const surface = set.surfaces[index];
  if (surface === undefined || (letter === undefined && index !== 0)) return -1;
  const column = Number(parts[2]);
  const row = Number(parts[3]);
  if (column < 1 || column > surface.columns || row < 1 || row > surface.rows) return -1;
  const panel = surface.at[(column - 1) * surface.rows + row - 1]!;
  return panel < 0 ? -1 : set.offsets[index]! + panel;
}
