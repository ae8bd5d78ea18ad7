import fc from 'fast-check';
import type { Band, Segment, Wall, WallHole } from '../../src/plan/wall';
import {
  angleArbitrary,
  idArbitrary,
  jointArbitrary,
  lengthArbitrary,
  letterArbitrary,
  offsetArbitrary,
  turnArbitrary,
} from './primitives';

const whole = (usual: number, most: number) =>
  fc.oneof(
    { weight: 8, arbitrary: fc.integer({ min: 1, max: usual }) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max: most }) },
  );

export const segmentArbitrary: fc.Arbitrary<Segment> = fc.record({
  id: idArbitrary,
  columns: whole(40, 5000),
  jointDeg: jointArbitrary,
  mixed: fc.option(fc.record({ jointDeg: jointArbitrary, count: whole(50, 5000) }), { nil: null }),
  jointBeforeDeg: jointArbitrary,
});

export const bandArbitrary: fc.Arbitrary<Band> = fc.record({
  id: idArbitrary,
  panelId: fc.oneof({ weight: 8, arbitrary: fc.constant('p1') }, { weight: 1, arbitrary: idArbitrary }),
  rows: whole(14, 1000),
  turnDeg: fc.oneof({ weight: 3, arbitrary: fc.constant(0 as const) }, { weight: 1, arbitrary: turnArbitrary }),
});

export const wallHoleArbitrary: fc.Arbitrary<WallHole> = fc.record({
  id: idArbitrary,
  name: fc.string({ maxLength: 10 }),
  segmentId: idArbitrary,
  column: whole(40, 5000),
  row: whole(14, 5000),
  columns: whole(10, 5000),
  rows: whole(10, 5000),
});

/** Any wall that the schema accepts; most bands take panel 'p1', so that give one of that id with it. */
export const wallArbitrary: fc.Arbitrary<Wall> = fc.record({
  id: idArbitrary,
  letter: letterArbitrary,
  name: fc.string({ maxLength: 20 }),
  place: fc.record({ xMm: offsetArbitrary, yMm: offsetArbitrary, turnDeg: angleArbitrary }),
  baseMm: lengthArbitrary,
  support: fc.constantFrom('stands' as const, 'hangs' as const),
  path: fc.uniqueArray(segmentArbitrary, { minLength: 1, maxLength: 6, selector: (one) => one.id }),
  bands: fc.uniqueArray(bandArbitrary, { minLength: 1, maxLength: 3, selector: (one) => one.id }),
  holes: fc.uniqueArray(wallHoleArbitrary, { maxLength: 4, selector: (one) => one.id }),
});
