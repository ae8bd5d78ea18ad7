import type { WiringGrid } from '../wiring-grid';

/** Row of a zone's lowest panel; the number of rows where there is none. */
export function lowestRow({ columns, rows, present }: Pick<WiringGrid, 'columns' | 'rows' | 'present'>): number {
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) if (present[column * rows + row] === 1) return row;
  }
  return rows;
}
