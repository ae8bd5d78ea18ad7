import type { CableLength } from '../../calc/runs/home-run-lengths';
import type { Plan } from '../../plan/plan';
import { exactFactors } from '../../units/exact-factors';

/** A stock length as it stands on a cable, whole metres or feet: '15 m', '50 ft'; what is longer than any with its own length. */
export function stockLengthText({ leastMm, stockMm }: CableLength, lengths: Plan['lengths']): string {
  const [unitMm, unit] = lengths === 'metric' ? [1000, 'm'] : [exactFactors.mmAFoot, 'ft'];
  return stockMm === null
    ? `at least ${Math.ceil(leastMm / unitMm)} ${unit}`
    : `${Math.round(stockMm / unitMm)} ${unit}`;
}
