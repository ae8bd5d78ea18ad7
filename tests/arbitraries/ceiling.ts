import fc from 'fast-check';
import type { Ceiling, CeilingHole, Outline } from '../../src/plan/ceiling';
import {
  angleArbitrary,
  idArbitrary,
  lengthArbitrary,
  letterArbitrary,
  offsetArbitrary,
  sizeArbitrary,
  turnArbitrary,
} from './primitives';

const usualSize = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 1, max: 20_000 }) },
  { weight: 1, arbitrary: sizeArbitrary },
);
const pointArbitrary = fc.record({
  xMm: fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: -10_000, max: 10_000 }) },
    { weight: 1, arbitrary: offsetArbitrary },
  ),
  yMm: fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: -10_000, max: 10_000 }) },
    { weight: 1, arbitrary: offsetArbitrary },
  ),
});

export const outlineArbitrary: fc.Arbitrary<Outline> = fc.oneof(
  fc.record({ kind: fc.constant('rectangle' as const), widthMm: usualSize, depthMm: usualSize }),
  fc.record({ kind: fc.constant('circle' as const), diameterMm: usualSize }),
  fc.record({
    kind: fc.constant('polygon' as const),
    points: fc.array(pointArbitrary, { minLength: 3, maxLength: 9 }),
  }),
);

export const ceilingHoleArbitrary: fc.Arbitrary<CeilingHole> = fc.record({
  id: idArbitrary,
  name: fc.string({ maxLength: 10 }),
  xMm: fc.integer({ min: -10_000, max: 10_000 }),
  yMm: fc.integer({ min: -10_000, max: 10_000 }),
  widthMm: usualSize,
  depthMm: usualSize,
});

/** Any ceiling that the schema accepts; most take panel 'p1'. */
export const ceilingArbitrary: fc.Arbitrary<Ceiling> = fc.record({
  id: idArbitrary,
  letter: letterArbitrary,
  name: fc.string({ maxLength: 20 }),
  panelId: fc.oneof({ weight: 8, arbitrary: fc.constant('p1') }, { weight: 1, arbitrary: idArbitrary }),
  turnDeg: turnArbitrary,
  place: fc.record({
    xMm: offsetArbitrary,
    yMm: offsetArbitrary,
    turnDeg: angleArbitrary,
    centredAcross: fc.boolean(),
    centredAlong: fc.boolean(),
  }),
  outline: outlineArbitrary,
  rule: fc.constantFrom('whole' as const, 'centre' as const, 'any' as const),
  holes: fc.uniqueArray(ceilingHoleArbitrary, { maxLength: 3, selector: (one) => one.id }),
  height: fc.record({ trimMm: lengthArbitrary, lowestMm: lengthArbitrary, highestMm: lengthArbitrary }),
});
