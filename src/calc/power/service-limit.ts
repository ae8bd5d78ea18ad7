import type { Power } from '../../plan/power';

/**
 * Amperes a leg that the service points carry together for a load that lasts: the usable share of the sum of their ratings, as
 * NEC 215.3 asks of a feeder's device; null where no point is stated. Whether the distros can be shared out over the points is
 * another matter.
 */
export function serviceLimitA(power: Pick<Power, 'servicePoints' | 'circuit'>): number | null {
  if (power.servicePoints.length === 0) return null;
  return power.servicePoints.reduce((sum, point) => sum + point.legA, 0) * power.circuit.usableShare;
}
