import { air } from '../tables/air';

/** Cubic metres of air a second that carry `watts` away while warming by `riseK`: P / (rho cp dT). */
export function airFlowM3PerS(watts: number, riseK: number): number {
  return watts / (air.densityKgPerM3 * air.heatJPerKgK * riseK);
}
