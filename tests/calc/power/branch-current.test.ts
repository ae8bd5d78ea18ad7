import { describe, expect, it } from 'vitest';
import electrical from '../../../fixtures/reference/electrical.json';
import { addBranches, branchAmps, branchCurrent } from '../../../src/calc/power/branch-current';

describe('branchCurrent', () => {
  it('of W at V and pf reads W / (V x pf) on an ammeter', () => {
    expect(branchAmps(branchCurrent(150, 230, 0.95))).toBeCloseTo(150 / (230 * 0.95), 12);
  });

  it('of a load at power factor 1 has no lagging part', () => {
    expect(branchCurrent(240, 120, 1)).toEqual({ activeA: 2, reactiveA: 0 });
  });

  it('at power factor 0.8 is the triangle of 3, 4 and 5', () => {
    const branch = branchCurrent(400, 100, 0.8);
    expect(branch.activeA).toBeCloseTo(4, 12);
    expect(branch.reactiveA).toBeCloseTo(3, 12);
  });

  it('gives back the printed power: 32 A on each of three legs of 230 V carry 22.08 kW', () => {
    const printed = electrical.examples.find((e) => e.name === 'power')!.values as { kW_230V_32A_x3: number };
    expect(branchAmps(branchCurrent((printed.kW_230V_32A_x3 * 1000) / 3, 230, 1))).toBeCloseTo(32, 9);
  });

  it('addBranches adds parts, not magnitudes', () => {
    const sum = addBranches(branchCurrent(400, 100, 0.8), branchCurrent(400, 100, 1));
    expect(branchAmps(sum)).toBeCloseTo(Math.hypot(8, 3), 12);
  });
});
