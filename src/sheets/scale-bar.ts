import type { Plan } from '../plan/plan';
import { exactFactors } from '../units/exact-factors';

const feet = [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;

/** Longest round length (1, 2 or 5 of a power of ten, or round feet) that a bar of `mostPx` pixels holds at a scale of pixels a mm. */
export function scaleBarMm(scale: number, mostPx: number, lengths: Plan['lengths']): number {
  const most = mostPx / scale;
  if (lengths === 'feet') {
    const fitting = feet.filter((ft) => ft * exactFactors.mmAFoot <= most);
    return (fitting.at(-1) ?? feet[0]) * exactFactors.mmAFoot;
  }
  const power = 10 ** Math.floor(Math.log10(most));
  const lead = most / power;
  return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
}
