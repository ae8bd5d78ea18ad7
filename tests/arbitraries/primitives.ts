import fc from 'fast-check';
import type { TurnDeg } from '../../src/plan/primitives';

const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
const digits = [...'abcdefghijklmnopqrstuvwxyz0123456789-'];

/** Ids from a small pool, so that references sometimes meet and sometimes dangle. */
export const idArbitrary: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom('p1', 'p2', 'p3'),
  fc
    .tuple(fc.constantFrom(...letters), fc.array(fc.constantFrom(...digits), { maxLength: 10 }))
    .map(([first, rest]) => first + rest.join('')),
);

export const letterArbitrary: fc.Arbitrary<string> = fc.constantFrom(...letters);

const micrometres = (least: number, most: number) => fc.integer({ min: least, max: most }).map((um) => um / 1000);

/** Lengths as the schema takes them: whole micrometres in mm, with a leaning towards what is built. */
export const sizeArbitrary: fc.Arbitrary<number> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(250, 500, 600, 609.6, 640, 900, 1000) },
  { weight: 1, arbitrary: micrometres(1, 100_000_000) },
  { weight: 1, arbitrary: fc.constantFrom(0.001, 1e5) },
);
export const lengthArbitrary: fc.Arbitrary<number> = fc.oneof(
  fc.constantFrom(0, 100, 6000, 1e6),
  micrometres(0, 1_000_000_000),
);
export const offsetArbitrary: fc.Arbitrary<number> = fc.oneof(
  fc.constantFrom(0, -1e6, 1e6),
  micrometres(-20_000_000, 20_000_000),
);
export const angleArbitrary: fc.Arbitrary<number> = fc.oneof(
  fc.constantFrom(0, 45, 90, -180, 180),
  fc.double({ min: -180, max: 180, noNaN: true }),
);
export const jointArbitrary: fc.Arbitrary<number> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(-5, -2.5, 0, 2.5, 5, 10) },
  { weight: 1, arbitrary: fc.constantFrom(-90, 90, 1e-12) },
  { weight: 1, arbitrary: fc.double({ min: -90, max: 90, noNaN: true }) },
);
export const turnArbitrary: fc.Arbitrary<TurnDeg> = fc.constantFrom<TurnDeg>(0, 90, 180, 270);
export const amountArbitrary: fc.Arbitrary<number> = fc.double({ min: 0, max: 1e12, noNaN: true });
