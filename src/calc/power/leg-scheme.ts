import type { Power } from '../../plan/power';
import type { Circuit } from './power-result';

export type Leg = 'L1' | 'L2' | 'L3';
/** Leg or pair of legs that a circuit may sit on. */
export type Branch = Circuit['leg'];

/** How circuits sit on the supply: the branches that they are spread over, the legs they load, and the volts of one branch. */
export interface LegScheme {
  readonly legs: readonly Leg[];
  readonly branches: readonly Branch[];
  /** Degrees by which each leg's voltage to neutral stands after L1's (negative: later). */
  readonly legAngleDeg: readonly number[];
  /** Degrees of each branch's voltage. */
  readonly branchAngleDeg: readonly number[];
  /** Nominal volts across a branch, and at the low end of the supply's range. */
  readonly nominalV: number;
  readonly lowestV: number;
}

/** Volts between two legs / volts from leg to neutral: sqrt 3 at 120 degrees, 2 at 180. */
export function legToLegFactor(kind: Power['supply']['kind']): number {
  return kind === 'wye' ? Math.sqrt(3) : 2;
}

export function legScheme(power: Pick<Power, 'supply' | 'connection'>): LegScheme {
  const { kind, legToNeutralV, lowestShare } = power.supply;
  const paired = power.connection === 'leg-to-leg';
  const nominalV = paired ? legToNeutralV * legToLegFactor(kind) : legToNeutralV;
  const volts = { nominalV, lowestV: nominalV * lowestShare };
  if (kind === 'wye') {
    const legs = { legs: ['L1', 'L2', 'L3'], legAngleDeg: [0, -120, 120] } as const;
    return paired
      ? { ...legs, ...volts, branches: ['L1-L2', 'L2-L3', 'L3-L1'], branchAngleDeg: [30, -90, 150] }
      : { ...legs, ...volts, branches: ['L1', 'L2', 'L3'], branchAngleDeg: [0, -120, 120] };
  }
  const legs = { legs: ['L1', 'L2'], legAngleDeg: [0, 180] } as const;
  return paired
    ? { ...legs, ...volts, branches: ['L1-L2'], branchAngleDeg: [0] }
    : { ...legs, ...volts, branches: ['L1', 'L2'], branchAngleDeg: [0, 180] };
}
