import type { MassesResults } from '../calc/masses/mass-result';
import type { SurfaceSet, SurfaceTable } from '../calc/surfaces/surface-table';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

/** Masses column by column, surface after surface. */
export function scheduleMasses(surfaces: SurfaceSet, masses: MassesResults): Schedule {
  const tables = new Map(
    surfaces.surfaces.map((table, s) => [table.surfaceId, { table, offset: surfaces.offsets[s]! }]),
  );
  const starts: number[] = [];
  let count = 0;
  for (const surface of masses.surfaces) {
    starts.push(count);
    count += surface.columnKg.length;
  }
  const find = (index: number) => {
    let s = starts.length - 1;
    while (s > 0 && starts[s]! > index) s--;
    const surface = masses.surfaces[s]!;
    return { surface, column: index - starts[s]! + 1, placed: tables.get(surface.surfaceId) };
  };
  return {
    id: 'masses',
    title: 'Masses by column',
    columns: [
      words('surface', 'Surface'),
      figures('column', 'Column', 'count'),
      figures('panels', 'Panels', 'count'),
      figures('mass', 'Mass', 'kg'),
    ],
    count,
    row: (index) => {
      const { surface, column, placed } = find(index);
      const panels = placed === undefined ? null : panelsIn(placed.table, column).length;
      return [surface.letter, column, panels, surface.columnKg[column - 1]!];
    },
    panelOf: (index) => {
      const { column, placed } = find(index);
      const lowest = placed === undefined ? undefined : panelsIn(placed.table, column)[0];
      return lowest === undefined ? null : placed!.offset + lowest;
    },
    totals: ['All', null, surfaces.total, masses.totalKg],
  };
}

/** The column's panels from the lowest up, by their index in the table. */
function panelsIn(table: SurfaceTable, column: number): readonly number[] {
  return Array.from(table.at.subarray((column - 1) * table.rows, column * table.rows)).filter((local) => local >= 0);
}
