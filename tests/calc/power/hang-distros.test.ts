import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hangDistros } from '../../../src/calc/power/hang-distros';
import { legScheme } from '../../../src/calc/power/leg-scheme';
import { powerOf } from '../../arbitraries/power-surfaces';

const scheme = legScheme(powerOf({ connection: 'leg-to-neutral' }));
const amps = (activeA: number) => ({ activeA, reactiveA: 0 });
/** A distro with the same on each leg. */
const even = (a: number) => scheme.branches.map(() => amps(a));
const point = (legA: number, signalA = 0) => ({ legA, onEachLeg: amps(signalA) });
const hang = (distros: readonly number[], points: readonly ReturnType<typeof point>[]) =>
  hangDistros(distros.map(even), scheme, points);

it('hangDistros keeps neighbours on one point and uses all points to as even a share as that allows', () => {
  expect(hang([90, 90, 90, 90, 90, 90], [point(320), point(320)])).toEqual([0, 0, 0, 1, 1, 1]);
  // A point of twice the amperes takes twice the distros.
  expect(hang([50, 50, 50], [point(100), point(200)])).toEqual([0, 1, 1]);
});

it('hangDistros finds no way for three distros of 60 A on two points of 100 A, though 180 A are fewer than 200', () => {
  expect(hang([60, 60, 60], [point(100), point(100)])).toBeNull();
  expect(hang([60], [point(50)])).toBeNull();
});

it('hangDistros leaves the order where only another one fits', () => {
  // In order: 60, then 60 and 40, and 40 is left over. The first with the third fits, and the second with the fourth.
  expect(hang([60, 60, 40, 40], [point(100), point(100)])).toEqual([0, 1, 0, 1]);
});

it('hangDistros counts what hangs on every leg of a point beside the distros', () => {
  expect(hang([50, 50], [point(100), point(40)])).toEqual([0, 0]);
  expect(hang([50, 50], [point(100, 1), point(40)])).toBeNull();
});

it('hangDistros goes by the worst leg of what hangs together, not by the sum of worst legs', () => {
  const on = (branch: number) => scheme.branches.map((_, b) => amps(b === branch ? 50 : 0));
  expect(hangDistros([on(0), on(1), on(2)], scheme, [point(50)])).toEqual([0, 0, 0]);
});

it('hangDistros hangs all distros within every point exactly where some way of hanging them does', () => {
  const size = fc.integer({ min: 1, max: 30 });
  fc.assert(
    fc.property(fc.array(size, { maxLength: 5 }), fc.array(size, { minLength: 1, maxLength: 3 }), (distros, limits) => {
      const loads = (pointOf: readonly number[]) =>
        limits.map((_, p) => distros.reduce((sum, a, d) => (pointOf[d] === p ? sum + a : sum), 0));
      const fits = (pointOf: readonly number[]) => loads(pointOf).every((load, p) => load <= limits[p]!);
      // Every way there is, counted in the number system of as many digits as points.
      const ways = Array.from({ length: limits.length ** distros.length }, (_, way) =>
        distros.map((_d, d) => Math.floor(way / limits.length ** d) % limits.length),
      );
      const hung = hang(
        distros,
        limits.map((legA) => point(legA)),
      );
      expect(hung !== null).toBe(ways.some(fits));
      if (hung !== null) expect(fits(hung)).toBe(true);
    }),
  );
});
