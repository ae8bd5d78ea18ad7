import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { legScheme } from '../../../src/calc/power/leg-scheme';
import { distroLimits, shareDistros } from '../../../src/calc/power/share-distros';
import { distroOf, powerOf } from '../../arbitraries/power-surfaces';

const wye = legScheme(powerOf());
const pairs = legScheme(powerOf({ connection: 'leg-to-leg' }));
const equal = (count: number, activeA = 10) => Array.from({ length: count }, () => ({ activeA, reactiveA: 0 }));

describe('shareDistros', () => {
  it('100 circuits, 48 to a distro: three of 34, 34, 32 and not 48, 48, 4', () => {
    expect(shareDistros(equal(100), [0], wye, { circuits: 48, legA: 1000 })).toEqual([0, 34, 68]);
  });

  it('stops at the amperes of a leg: 30 A a leg carry three circuits of 10 A on each of three legs', () => {
    expect(shareDistros(equal(18), [0], wye, { circuits: 48, legA: 30 })).toEqual([0, 9]);
  });

  it('counts line currents of pairs: sqrt 3 x 10 A on each leg with one circuit a pair', () => {
    expect(shareDistros(equal(6), [0], pairs, { circuits: 48, legA: 17.4 })).toEqual([0, 3]);
    expect(shareDistros(equal(6), [0], pairs, { circuits: 48, legA: 17.3 })).toEqual([0, 1, 2, 3, 4, 5]); // two pairs meet on a leg: 17.32 A again
  });

  it('keeps surfaces apart where that takes no more distros, together where it does', () => {
    expect(shareDistros(equal(40), [0, 22], wye, { circuits: 24, legA: 1000 })).toEqual([0, 22]);
    expect(shareDistros(equal(40), [0, 10], wye, { circuits: 20, legA: 1000 })).toEqual([0, 20]);
  });

  it('gives a distro one circuit even where that is too much, so that the check can say so', () => {
    expect(shareDistros(equal(2), [0], wye, { circuits: 48, legA: 5 })).toEqual([0, 1]);
  });

  it('of no circuits is no distro', () => {
    expect(shareDistros([], [0, 0], wye, { circuits: 48, legA: 100 })).toEqual([]);
  });

  it('keeps every distro within its circuits, none empty, all circuits in order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 16 }), { minLength: 1, maxLength: 80 }),
        fc.integer({ min: 1, max: 30 }),
        (list, circuits) => {
          const loads = list.map((activeA) => ({ activeA, reactiveA: 0 }));
          const starts = shareDistros(loads, [0, Math.floor(list.length / 2)], wye, { circuits, legA: 40 });
          const sizes = starts.map((from, i) => (starts[i + 1] ?? list.length) - from);
          expect(starts[0]).toBe(0);
          expect(Math.min(...sizes)).toBeGreaterThan(0);
          expect(Math.max(...sizes)).toBeLessThanOrEqual(circuits);
        },
      ),
    );
  });

  it('distroLimits takes the usable share of its rating (NEC 215.3: 400 A carry 320 A)', () => {
    expect(distroLimits(distroOf({ legA: 400, circuits: 12 }), 0.8)).toEqual({ circuits: 12, legA: 320 });
  });
});
