import type { Ceiling } from '../../plan/ceiling';
import { newTable } from '../surfaces/new-table';
import type { SurfaceTable } from '../surfaces/surface-table';
import type { CeilingAxes } from './ceiling-axes';
import { HALVES_A_MM } from './lattice';
import type { LatticeCeiling } from './lattice-ceiling';

/** One pass over the lattice: columns from the left as seen from below with the ceiling's own +y up, rows from the bottom. */
export function fillCeilingTable(ceiling: Ceiling, laid: LatticeCeiling, axes: CeilingAxes): SurfaceTable {
  const { type, lattice, clipped } = laid;
  const { firstI, firstJ, columns, rows, kept, count } = clipped;
  const canvas = { width: columns * type.pixelsWide, height: rows * type.pixelsHigh };
  const table = newTable(ceiling, 'ceiling', [type], { count, columns, rows }, canvas);
  table.zMm.fill(ceiling.height.trimMm);
  // Left to right as seen from below runs against the ceiling's own x.
  table.headingDeg.fill(ceiling.place.turnDeg + 180);
  let panel = 0;
  for (let i = 0; i < columns; i++) {
    const u = (lattice.startU + (firstI + i) * lattice.stepU + lattice.stepU / 2) / HALVES_A_MM;
    for (let j = 0; j < rows; j++) {
      if (kept[i * rows + j] === 0) continue;
      const v = (lattice.startV + (firstJ + j) * lattice.stepV + lattice.stepV / 2) / HALVES_A_MM;
      const { xMm, yMm } = axes.toPlan(u, v);
      table.at[i * rows + j] = panel;
      table.column[panel] = i + 1;
      table.row[panel] = j + 1;
      table.xMm[panel] = xMm;
      table.yMm[panel] = yMm;
      table.canvasX[panel] = i * type.pixelsWide;
      table.canvasY[panel] = (rows - 1 - j) * type.pixelsHigh;
      panel++;
    }
  }
  return table;
}
