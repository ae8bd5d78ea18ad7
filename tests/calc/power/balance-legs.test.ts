import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balanceLegs } from '../../../src/calc/power/balance-legs';

const amps = (...list: number[]) => list.map((activeA) => ({ activeA, reactiveA: 0 }));
const loadsOf = (list: readonly { activeA: number }[]) => list.map((branch) => branch.activeA);

/** Least possible worst leg, by trying every way. */
function leastWorst(circuits: readonly number[], legs: number[]): number {
  const [next, ...rest] = circuits;
  if (next === undefined) return Math.max(...legs);
  return Math.min(
    ...legs.map((_, k) =>
      leastWorst(
        rest,
        legs.map((a, i) => (i === k ? a + next : a)),
      ),
    ),
  );
}

describe('balanceLegs', () => {
  it('puts equal circuits on the legs in turn', () => {
    const { branchOf, byBranch } = balanceLegs(amps(9, 9, 9, 9, 9, 9), [0, 0, 0]);
    expect([...branchOf]).toEqual([0, 1, 2, 0, 1, 2]);
    expect(loadsOf(byBranch)).toEqual([18, 18, 18]);
  });

  it('gives what is left over to the leg with least on it on the whole stage', () => {
    expect([...balanceLegs(amps(9), [20, 30, 10]).branchOf]).toEqual([2]);
  });

  it('takes circuits that differ by rounding as equal', () => {
    const { branchOf } = balanceLegs(amps(0.3, 0.1 + 0.2, 0.3), [0, 0, 0]);
    expect([...branchOf]).toEqual([0, 1, 2]);
  });

  it('the worst of three legs is at most 11/9 of the least possible (Graham 1969, from memory)', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 8 }), (list) => {
        const worst = Math.max(...loadsOf(balanceLegs(amps(...list), [0, 0, 0]).byBranch));
        expect(worst).toBeLessThanOrEqual((11 / 9) * leastWorst(list, [0, 0, 0]) + 1e-9);
      }),
    );
  });

  it('the worst leg never exceeds the average by more than one circuit, and nothing is lost', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 20, noNaN: true }), { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 1, max: 3 }),
        (list, legs) => {
          const loads = loadsOf(balanceLegs(amps(...list), new Array<number>(legs).fill(0)).byBranch);
          const sum = list.reduce((a, b) => a + b);
          expect(loads.reduce((a, b) => a + b)).toBeCloseTo(sum, 6);
          expect(Math.max(...loads)).toBeLessThanOrEqual(sum / legs + Math.max(...list) + 1e-6);
        },
      ),
    );
  });
});
