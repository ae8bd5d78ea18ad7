import heatUnits from '../../shared/heat-units.json';
import standardGravity from '../../shared/standard-gravity.json';

const mmAnInch = 25.4;
const mmAFoot = 304.8;
const kgAPound = 0.45359237;
const wattsABtuh = heatUnits.joulesABtu / heatUnits.secondsAnHour;
const m2ASquareFoot = 0.09290304;

/**
 * Exact conversion factors.
 * Source: international yard and pound agreement of 1959 (inch 25.4 mm, foot 12 inches, pound 0.45359237 kg; exact, from
 * memory); those of heat and weight from the shared tables.
 */
export const exactFactors = {
  mmAnInch,
  mmAFoot,
  kgAPound,
  m2ASquareFoot,
  m3ACubicFoot: 0.028316846592,
  wattsABtuh,
  wattsATon: heatUnits.btuhATon * wattsABtuh,
  /** Pound-force to the square foot. */
  kpaAPsf: (kgAPound * standardGravity.metresPerSecond2) / m2ASquareFoot / 1000,
} as const;
