import type { Wish } from '../../plan/wish';
import { air } from '../tables/air';

/** Cubic metres of air in the hall; null where a side of it is not stated. */
export function hallVolumeM3({ lengthMm, widthMm, clearHeightMm }: Wish['hall']): number | null {
  if (lengthMm === null || widthMm === null || clearHeightMm === null) return null;
  return (lengthMm / 1000) * (widthMm / 1000) * (clearHeightMm / 1000);
}

/**
 * Minutes until the air of a closed room is `riseK` warmer: rho cp V dT / P. Air only, so it comes sooner than in truth, where
 * walls, floor and steel warm up too. Null without a hall and without heat, or with so little that no figure holds the time.
 */
export function warmUpMin(watts: number, volumeM3: number | null, riseK: number): number | null {
  if (volumeM3 === null || watts <= 0) return null;
  const minutes = (air.densityKgPerM3 * air.heatJPerKgK * volumeM3 * riseK) / watts / 60;
  return Number.isFinite(minutes) ? minutes : null;
}
