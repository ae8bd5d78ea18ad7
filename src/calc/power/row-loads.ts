import type { SurfaceTable } from '../surfaces/surface-table';
import type { RowLoads } from './cut-rows';
import type { PanelCurrent } from './panel-current';
import { fitsWithin, panelsWithin } from './panels-within';

/** Amperes of the rows below each row, column by column: row r of column c at c x (rows + 1) + r. */
function amperesBelow(table: SurfaceTable, currents: readonly PanelCurrent[]): Float64Array {
  const below = new Float64Array(table.columns * (table.rows + 1));
  for (let column = 0; column < table.columns; column++) {
    const start = column * (table.rows + 1);
    for (let row = 0; row < table.rows; row++) {
      const panel = table.at[column * table.rows + row]!;
      below[start + row + 1] = below[start + row]! + (panel < 0 ? 0 : currents[table.type[panel]!]!.currentA);
    }
  }
  return below;
}

/** Circuits that whole columns take side by side, counted column by column. */
function countByColumns(table: SurfaceTable, currents: readonly PanelCurrent[]): RowLoads['circuits'] {
  const below = amperesBelow(table, currents);
  return (from, to, limitA) => {
    let count = 0;
    let sum = Number.POSITIVE_INFINITY;
    for (let start = 0; start < below.length; start += table.rows + 1) {
      const column = below[start + to]! - below[start + from]!;
      sum += column;
      if (column > 0 && !fitsWithin(sum, limitA)) {
        count++;
        sum = column;
      }
    }
    return count;
  };
}

/** The same where all columns are alike: no holes, one panel type a row. */
function countAlike(columns: number, currentA: Float64Array): RowLoads['circuits'] {
  const below = new Float64Array(currentA.length + 1);
  currentA.forEach((amps, row) => {
    below[row + 1] = below[row]! + amps;
  });
  return (from, to, limitA) => {
    const column = below[to]! - below[from]!;
    return column > 0 ? Math.ceil(columns / Math.max(1, panelsWithin(limitA, column))) : 0;
  };
}

/** Rows of a surface as circuits see them. `currents` has one entry a panel type of the table. */
export function rowLoads(table: SurfaceTable, currents: readonly PanelCurrent[]): RowLoads {
  const currentA = new Float64Array(table.rows);
  const limitA = new Float64Array(table.rows).fill(Number.POSITIVE_INFINITY);
  const typeOfRow = new Int16Array(table.rows).fill(-1);
  let isAlike = table.count === table.columns * table.rows;
  for (let i = 0; i < table.count; i++) {
    const row = table.row[i]! - 1;
    const type = table.type[i]!;
    if (type === typeOfRow[row]) continue;
    if (typeOfRow[row] !== -1) isAlike = false;
    typeOfRow[row] = type;
    const panel = currents[type]!;
    currentA[row] = Math.max(currentA[row]!, panel.currentA);
    limitA[row] = Math.min(limitA[row]!, panel.limitA);
  }
  const circuits = isAlike ? countAlike(table.columns, currentA) : countByColumns(table, currents);
  return { currentA, limitA, circuits };
}
