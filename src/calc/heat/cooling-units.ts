import { btuhAWatt, heatUnits } from '../tables/heat-units';

/** British thermal units an hour. */
export function wattsToBtuh(watts: number): number {
  return watts * btuhAWatt;
}

/** Tons of refrigeration. */
export function wattsToTons(watts: number): number {
  return wattsToBtuh(watts) / heatUnits.btuhATon;
}
