import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mirrorPath } from '../../src/plan/mirror-path';
import type { Segment } from '../../src/plan/wall';
import { wall } from '../arbitraries/plan-surfaces';

const segment = (id: string, columns: number, jointDeg: number, jointBeforeDeg: number): Segment => {
  return { id, columns, jointDeg, mixed: null, jointBeforeDeg };
};

/** Joints in the order of a walk, worked out here and not by the program: before each column but the first. */
const jointsOf = (path: readonly Segment[]) =>
  path
    .flatMap(({ columns, jointDeg, jointBeforeDeg }, place) =>
      Array.from({ length: columns }, (_, column) =>
        column === 0 ? (place === 0 ? Number.NaN : jointBeforeDeg) : jointDeg,
      ),
    )
    .slice(1);

test('mirrorPath gives the joints of the walk from the other end', () => {
  // 3 columns at 1 degree, then 5 degrees to 2 columns at 2 degrees: 1 1 5 2; from the other end 2 5 1 1.
  const path = [segment('a', 3, 1, 0), segment('b', 2, 2, 5)];
  expect(jointsOf(path)).toEqual([1, 1, 5, 2]);
  expect(jointsOf(mirrorPath(path))).toEqual([2, 5, 1, 1]);
  expect(mirrorPath(path).map(({ id }) => id)).toEqual(['b', 'a']);
});

test('mirrorPath twice is the path, and always turns the joints round', () => {
  fc.assert(
    fc.property(wall('small')('wall-1'), ({ path }) => {
      expect(mirrorPath(mirrorPath(path))).toEqual(path);
      expect(jointsOf(mirrorPath(path))).toEqual(jointsOf(path).reverse());
    }),
  );
});
