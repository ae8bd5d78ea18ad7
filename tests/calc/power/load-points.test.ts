import { expect, it } from 'vitest';
import { noBranch } from '../../../src/calc/power/branch-current';
import { legScheme } from '../../../src/calc/power/leg-scheme';
import { loadPoints } from '../../../src/calc/power/load-points';
import { servicePoint } from '../../arbitraries/power-inputs';
import { powerOf } from '../../arbitraries/power-surfaces';

const scheme = legScheme(powerOf({ connection: 'leg-to-neutral' }));
const even = (activeA: number) => scheme.branches.map(() => ({ activeA, reactiveA: 0 }));
const load = (
  points: readonly (readonly [string, number])[],
  distros: readonly number[],
  signalA = 0,
  numbers = distros.map((_, d) => d + 1),
) =>
  loadPoints(
    powerOf({
      servicePoints: points.map(([id, legA]) => servicePoint(id, legA)),
      circuit: { ratedA: 16, usableShare: 0.8 },
    }),
    scheme,
    numbers,
    distros.map(even),
    { activeA: signalA, reactiveA: 0 },
  );

it('loadPoints adds up the legs of the distros on each point, against the usable share of its rating', () => {
  const points = load(
    [
      ['west', 400],
      ['east', 200],
    ],
    [100, 100, 100],
  );
  expect(points.map(({ name, distros }) => [name, distros])).toEqual([
    ['west', [1, 2]],
    ['east', [3]],
  ]);
  expect(points[0]!.legs[0]).toEqual({ leg: 'L1', currentA: expect.closeTo(200, 9), limitA: 320 });
  expect(points[1]!.legs[2]).toEqual({ leg: 'L3', currentA: expect.closeTo(100, 9), limitA: 160 });
});

it('loadPoints says distros by the numbers that they have', () => {
  expect(load([['west', 400]], [100, 50], 0, [7, 3]).map(({ distros }) => distros)).toEqual([[7, 3]]);
});

it('loadPoints spreads signal equipment over the points by their amperes', () => {
  const points = load(
    [
      ['west', 300],
      ['east', 100],
    ],
    [50, 50],
    8,
  );
  const worst = points.map(({ legs }) => legs[0]!.currentA);
  // Of 8 A, 6 hang on the point of 300 A and 2 on that of 100 A. Both distros on the larger point are the evener share.
  expect(worst).toEqual([expect.closeTo(106, 9), expect.closeTo(2, 9)]);
});

it('loadPoints has nothing without a point, without a distro and where no way was found', () => {
  expect(load([], [10])).toEqual([]);
  expect(load([['west', 100]], [])).toEqual([]);
  expect(
    load(
      [
        ['west', 100],
        ['east', 100],
      ],
      [60, 60, 60],
    ),
  ).toEqual([]);
  expect(loadPoints(powerOf({}), scheme, [], [], noBranch)).toEqual([]);
});
