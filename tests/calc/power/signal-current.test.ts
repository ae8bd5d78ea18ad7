import { describe, expect, it } from 'vitest';
import { branchAmps } from '../../../src/calc/power/branch-current';
import { signalCurrent, signalPowerFactor } from '../../../src/calc/power/signal-current';

describe('signalCurrent', () => {
  it('spreads its watts evenly over three legs, or two, at the lowest voltage', () => {
    // By hand: 6000 W / 3 / (200 V x 0.95) = 10.526 A; over two legs 15.789 A.
    const amps = (kind: 'wye' | 'split-phase') =>
      branchAmps(signalCurrent({ kind, legToNeutralV: 250, lowestShare: 0.8 }, 6000));
    expect(signalPowerFactor).toBe(0.95);
    expect(amps('wye')).toBeCloseTo(10.526, 3);
    expect(amps('split-phase')).toBeCloseTo(15.789, 3);
  });
});
