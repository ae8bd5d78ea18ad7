import type { Ceiling } from '../../plan/ceiling';
import { toMicrometres } from '../surfaces/micrometres';
import type { PlacedPanelType } from '../surfaces/surface-table';

/**
 * The lattice of a ceiling as seen from below with its own +y up: u counts against its own x, v along its own y, both in
 * half micrometres, so that halves of sizes are whole. Place (i, j) spans stepU x stepV from startU + i stepU,
 * startV + j stepV; place (0, 0) begins at the origin or, along a centred axis, has its middle there.
 */
export interface Lattice {
  readonly startU: number;
  readonly startV: number;
  readonly stepU: number;
  readonly stepV: number;
}

/** Half micrometres in a millimetre. */
export const HALVES_A_MM = 2000;

export const toHalves = (mm: number): number => 2 * toMicrometres(mm);

export function latticeOf(place: Ceiling['place'], type: PlacedPanelType): Lattice {
  const stepU = toHalves(type.widthMm);
  const stepV = toHalves(type.heightMm);
  return {
    stepU,
    stepV,
    startU: place.centredAcross ? -stepU / 2 : 0,
    startV: place.centredAlong ? -stepV / 2 : 0,
  };
}
