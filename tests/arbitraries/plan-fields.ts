import fc from 'fast-check';
import type { Anchor, BitDepth, FrameRate, TurnDeg } from '../../src/plan/primitives';

/** Any number from `min` to `max`, bounds and odd places included, never -0. */
export const number = (min: number, max: number) =>
  fc.oneof(
    fc.double({ min, max, noNaN: true }).map((value) => value + 0),
    fc.constantFrom(min, max, Math.min(max, Math.max(min, 1))),
  );
export const whole = (min: number, max: number) => fc.integer({ min, max });
/** A length in mm from `min` to `max`, in whole micrometres. */
export const lengthWithin = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((micrometres) => micrometres / 1000);

export const nullable = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null, freq: 4 });

/** One of a few ids of a kind, so that references meet what they refer to, and sometimes miss it. */
export const idOf = (stem: string, most = 4) => whole(1, most).map((n) => `${stem}-${n}`);
/** Entries of a list in which each has an id of its own. */
export const listOf = <Item>(stem: string, item: (id: string) => fc.Arbitrary<Item>, most: number, least = 0) =>
  fc
    .uniqueArray(whole(1, most), { minLength: least, maxLength: most })
    .chain((numbers) => fc.tuple(...numbers.map((n) => item(`${stem}-${n}`))));

export const text = (maxLength: number) =>
  fc.string({ unit: 'grapheme', maxLength }).map((any) => any.slice(0, maxLength).replace(/[\p{Cc}\p{Cs}]/gu, ' '));
export const label = fc.oneof({ weight: 9, arbitrary: text(12) }, { weight: 1, arbitrary: text(200) });

export const share = number(0, 1);
export const amount = fc.oneof(number(0, 10_000), number(0, 1e12));
export const count = whole(0, 1_000_000);
export const turnDeg: fc.Arbitrary<TurnDeg> = fc.constantFrom(0, 90, 180, 270);
export const bitDepth: fc.Arbitrary<BitDepth> = fc.constantFrom(8, 10, 12);

export const frameRate: fc.Arbitrary<FrameRate> = fc.oneof(
  fc.constantFrom(24, 25, 30, 48, 50, 60, 100, 120).map((frames) => ({ frames, seconds: 1 })),
  fc.constantFrom(24, 30, 48, 60, 120).map((nominal) => ({ frames: nominal * 1000, seconds: 1001 })),
  fc.record({ frames: whole(1, 1_000_000), seconds: whole(1, 10_000) }),
);

export const mode = fc.record({ rate: frameRate, depthBits: bitDepth, pictures: fc.oneof(whole(1, 4), whole(1, 16)) });

export const surfaceId = fc.oneof(idOf('wall', 3), idOf('ceiling', 2));
export const anchor: fc.Arbitrary<Anchor> = fc.record({
  surfaceId,
  segmentId: nullable(idOf('segment', 3)),
  column: fc.oneof(whole(-2, 12), whole(-10_000, 10_000)),
  row: fc.oneof(whole(-2, 12), whole(-10_000, 10_000)),
});
