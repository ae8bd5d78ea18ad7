import fc from 'fast-check';
import type { Ceiling } from '../../src/plan/ceiling';
import type { Wall } from '../../src/plan/wall';
import { idOf, label, lengthWithin, listOf, nullable, number, turnDeg, whole } from './plan-fields';

/** How large surfaces may get: everything that the schema accepts, or few enough panels to evaluate many times. */
export type Size = 'any' | 'small';

const offset = lengthWithin(-1e6, 1e6);
const length = lengthWithin(0, 1e6);
const joint = fc.oneof(fc.constantFrom(0, 2.5, 3, 5, -5, 10), number(-90, 90));
const countUpTo = (size: Size, small: number, most: number) =>
  size === 'small' ? whole(1, small) : fc.oneof({ weight: 4, arbitrary: whole(1, small) }, whole(1, most));

const segment = (size: Size) => (id: string) =>
  fc.record({
    id: fc.constant(id),
    columns: countUpTo(size, 8, 5000),
    jointDeg: joint,
    mixed: nullable(fc.record({ jointDeg: joint, count: countUpTo(size, 8, 5000) })),
    jointBeforeDeg: joint,
  });

const band = (size: Size) => (id: string) =>
  fc.record({ id: fc.constant(id), panelId: idOf('panel'), rows: countUpTo(size, 5, 1000), turnDeg });

const wallHole = (id: string) =>
  fc.record({
    id: fc.constant(id),
    name: label,
    segmentId: idOf('segment'),
    column: fc.oneof(whole(1, 8), whole(1, 5000)),
    row: fc.oneof(whole(1, 8), whole(1, 5000)),
    columns: fc.oneof(whole(1, 3), whole(1, 5000)),
    rows: fc.oneof(whole(1, 3), whole(1, 5000)),
  });

/** A wall whose id is `id` and whose letter goes with the number in it, so that no two walls share one. */
export const wall =
  (size: Size) =>
  (id: string): fc.Arbitrary<Wall> =>
    fc.record({
      id: fc.constant(id),
      letter: fc.constant('ABC'[Number(id.at(-1)) - 1]!),
      name: label,
      place: fc.record({ xMm: offset, yMm: offset, turnDeg: number(-180, 180) }),
      baseMm: fc.oneof(fc.constant(0), length),
      support: fc.constantFrom('stands', 'hangs'),
      path: listOf('segment', segment(size), 3, 1),
      bands: listOf('band', band(size), 2, 1),
      holes: listOf('hole', wallHole, 2),
    });

const point = fc.record({ xMm: lengthWithin(-5000, 5000), yMm: lengthWithin(-5000, 5000) });
const across = (size: Size) =>
  size === 'small' ? lengthWithin(0.001, 6000) : fc.oneof(lengthWithin(0.001, 6000), lengthWithin(0.001, 1e5));

const outline = (size: Size): fc.Arbitrary<Ceiling['outline']> =>
  fc.oneof(
    fc.record({ kind: fc.constant('rectangle' as const), widthMm: across(size), depthMm: across(size) }),
    fc.record({ kind: fc.constant('circle' as const), diameterMm: across(size) }),
    fc.record({ kind: fc.constant('polygon' as const), points: fc.array(point, { minLength: 3, maxLength: 8 }) }),
  );

const ceilingHole = (id: string) =>
  fc.record({
    id: fc.constant(id),
    name: label,
    xMm: lengthWithin(-5000, 5000),
    yMm: lengthWithin(-5000, 5000),
    widthMm: lengthWithin(0.001, 2000),
    depthMm: lengthWithin(0.001, 2000),
  });

export const ceiling =
  (size: Size) =>
  (id: string): fc.Arbitrary<Ceiling> =>
    fc.record({
      id: fc.constant(id),
      letter: fc.constant('DE'[Number(id.at(-1)) - 1]!),
      name: label,
      panelId: idOf('panel'),
      turnDeg,
      place: fc.record({
        xMm: offset,
        yMm: offset,
        turnDeg: number(-180, 180),
        centredAcross: fc.boolean(),
        centredAlong: fc.boolean(),
      }),
      outline: outline(size),
      rule: fc.constantFrom('whole', 'centre', 'any'),
      holes: listOf('hole', ceilingHole, 2),
      height: fc.record({ trimMm: length, lowestMm: length, highestMm: length }),
    });
