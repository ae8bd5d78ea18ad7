import type { PointMm } from '../walls/wall-result';
import type { CeilingAxes } from './ceiling-axes';
import type { ClippedLattice } from './clip-ceiling';
import { discOverlap } from './disc-overlap';
import { HALVES_A_MM, type Lattice } from './lattice';

/** Area of a disc, given in plan, that the panels of a ceiling cover, in square metres. */
export function coveredAreaM2(
  { firstI, firstJ, columns, rows, kept }: ClippedLattice,
  lattice: Lattice,
  axes: CeilingAxes,
  centre: PointMm,
  radiusMm: number,
): number {
  const [centreU, centreV] = axes.fromPlan(centre.xMm, centre.yMm);
  const widthMm = lattice.stepU / HALVES_A_MM;
  const heightMm = lattice.stepV / HALVES_A_MM;
  let covered = 0;
  for (let i = 0; i < columns; i++) {
    const fromU = (lattice.startU + (firstI + i) * lattice.stepU) / HALVES_A_MM - centreU;
    for (let j = 0; j < rows; j++) {
      if (kept[i * rows + j] === 0) continue;
      const fromV = (lattice.startV + (firstJ + j) * lattice.stepV) / HALVES_A_MM - centreV;
      covered += discOverlap({ fromU, toU: fromU + widthMm, fromV, toV: fromV + heightMm }, radiusMm);
    }
  }
  return covered / 1e6;
}
