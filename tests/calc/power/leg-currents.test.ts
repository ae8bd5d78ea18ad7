import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import electrical from '../../../fixtures/reference/electrical.json';
import { type BranchCurrent, branchCurrent } from '../../../src/calc/power/branch-current';
import { legCurrents } from '../../../src/calc/power/leg-currents';
import { legScheme } from '../../../src/calc/power/leg-scheme';
import { powerOf } from '../../arbitraries/power-surfaces';

const example = (name: string) => electrical.examples.find((e) => e.name.startsWith(name))!.values;
const supply = (kind: 'wye' | 'split-phase') => ({ kind, legToNeutralV: 120, lowestShare: 1 });
const scheme = (kind: 'wye' | 'split-phase', connection: 'leg-to-neutral' | 'leg-to-leg') =>
  legScheme(powerOf({ supply: supply(kind), connection }));
const atUnity = (...amps: number[]): BranchCurrent[] => amps.map((activeA) => ({ activeA, reactiveA: 0 }));
const ampsArbitrary = fc.double({ min: 0, max: 1000, noNaN: true });

describe('legCurrents, leg to neutral on a wye', () => {
  it.each([
    ['wye neutral 10, 15, 20', [10, 15, 20]],
    ['wye neutral 10, 10, 5', [10, 10, 5]],
    ['wye neutral 10, 8, 6', [10, 8, 6]],
  ])('%s A: the printed neutral', (name, amps) => {
    const { legA, neutralA } = legCurrents(scheme('wye', 'leg-to-neutral'), atUnity(...amps));
    expect(neutralA).toBeCloseTo((example(name) as { IN: number }).IN, 9);
    legA.forEach((a, i) => {
      expect(a).toBeCloseTo(amps[i]!, 12);
    });
  });

  it('equal legs leave exactly nothing on the neutral', () => {
    expect(legCurrents(scheme('wye', 'leg-to-neutral'), atUnity(37, 37, 37)).neutralA).toBe(0);
  });

  it('equal currents of different power factor do not cancel: 10 A at 1, 1 and 0.8', () => {
    // By hand: the third leg's current turned by acos 0.8 leaves |10 - 10 (0.8 - 0.6j)| = 10 sqrt(0.2^2 + 0.6^2) = 6.3246 A.
    const loads = [branchCurrent(1200, 120, 1), branchCurrent(1200, 120, 1), branchCurrent(960, 120, 0.8)];
    const { legA, neutralA } = legCurrents(scheme('wye', 'leg-to-neutral'), loads);
    expect(legA[2]).toBeCloseTo(10, 9);
    expect(neutralA).toBeCloseTo(6.324555, 6);
  });

  it('an even load on each leg adds to the legs and nothing to the neutral', () => {
    const { legA, neutralA } = legCurrents(scheme('wye', 'leg-to-neutral'), atUnity(1, 2, 3), atUnity(10)[0]!);
    expect(legA.map((a) => Math.round(a * 1e6))).toEqual([11e6, 12e6, 13e6]);
    expect(neutralA).toBeCloseTo(Math.sqrt(3), 9); // |1 + 2 at -120 + 3 at 120| = sqrt(1 + 4 + 9 - 2 - 6 - 3)
  });
});

describe('legCurrents, leg to leg on a wye', () => {
  it('50, 30, 20 A on the three pairs: the printed line currents', () => {
    const printed = example('unity-power-factor delta') as { IA: number; IB: number; IC: number };
    const { legA, neutralA } = legCurrents(scheme('wye', 'leg-to-leg'), atUnity(50, 30, 20));
    expect(legA[0]).toBeCloseTo(printed.IA, 3);
    expect(legA[1]).toBeCloseTo(printed.IB, 3);
    expect(legA[2]).toBeCloseTo(printed.IC, 3);
    expect(neutralA).toBe(0);
  });

  it('30 A on one pair alone loads its two legs and not the third', () => {
    const printed = example('single branch') as { IA: number; IB: number; IC: number };
    const { legA } = legCurrents(scheme('wye', 'leg-to-leg'), atUnity(30, 0, 0));
    expect(legA).toEqual([expect.closeTo(printed.IA, 9), expect.closeTo(printed.IB, 9), expect.closeTo(printed.IC, 9)]);
  });

  it('equal power factor: every line is sqrt(Iab^2 + Ica^2 + Iab Ica), whatever the factor', () => {
    fc.assert(
      fc.property(
        ampsArbitrary,
        ampsArbitrary,
        ampsArbitrary,
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (a, b, c, pf) => {
          const loads = [a, b, c].map((amps) => branchCurrent(amps * 200 * pf, 200, pf));
          const { legA } = legCurrents(scheme('wye', 'leg-to-leg'), loads);
          const line = (x: number, y: number) => Math.sqrt(x * x + y * y + x * y);
          [line(a, c), line(b, a), line(c, b)].forEach((expected, i) => {
            expect(Math.abs(legA[i]! - expected)).toBeLessThan(1e-8);
          });
        },
      ),
    );
  });
});

describe('legCurrents on a split-phase supply', () => {
  it('leg to neutral: the neutral carries the difference of the legs', () => {
    fc.assert(
      fc.property(ampsArbitrary, ampsArbitrary, (a, b) => {
        const { legA, neutralA } = legCurrents(scheme('split-phase', 'leg-to-neutral'), atUnity(a, b));
        expect(legA[0]).toBeCloseTo(a, 9);
        expect(legA[1]).toBeCloseTo(b, 9);
        expect(neutralA).toBeCloseTo(Math.abs(a - b), 9);
      }),
    );
  });

  it('leg to leg: both legs carry the one pair, the neutral nothing', () => {
    const { legA, neutralA } = legCurrents(scheme('split-phase', 'leg-to-leg'), atUnity(42));
    expect(legA).toEqual([expect.closeTo(42, 9), expect.closeTo(42, 9)]);
    expect(neutralA).toBe(0);
  });
});
