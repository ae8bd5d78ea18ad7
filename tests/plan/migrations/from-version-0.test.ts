import { expect, test } from 'vitest';
import { fromVersion0 } from '../../../src/plan/migrations/from-version-0';

const { migrate } = fromVersion0;
const rateOf = (rate: unknown) => {
  const picture = { base: { rate }, bySurface: [], alsoServe: [] };
  return (migrate({ picture }) as { picture: { base: { rate: unknown } } }).picture.base.rate;
};

// Exact: 24 / 1.001 = 23.976024, 60 / 1.001 = 59.940060 (ITU-R BT.709-6, BT.2020-2).
test.each([
  [24, { frames: 24, seconds: 1 }],
  [23.976, { frames: 24_000, seconds: 1001 }],
  [23.98, { frames: 24_000, seconds: 1001 }],
  [29.97, { frames: 30_000, seconds: 1001 }],
  [59.94, { frames: 60_000, seconds: 1001 }],
  [12.5, { frames: 12_500, seconds: 1000 }],
])('a rate of %f becomes the exact fraction', (rate, exact) => {
  expect(rateOf(rate)).toEqual(exact);
});

test('rates of single surfaces, and those that must be served too, come along', () => {
  const entry = { surfaceId: 'wall', mode: { rate: 25, depthBits: 8 } };
  const { picture } = migrate({ picture: { base: {}, bySurface: [entry], alsoServe: [entry] } }) as never;
  const mode = { rate: { frames: 25, seconds: 1 }, depthBits: 8 };
  expect(picture).toMatchObject({ bySurface: [{ ...entry, mode }], alsoServe: [{ ...entry, mode }] });
});

test('feet get their name, and what did not exist yet is empty', () => {
  expect(migrate({ lengths: 'imperial' })).toEqual({ lengths: 'feet', existingWiring: null, alternatives: [] });
  expect(migrate({ lengths: 'metric' })).toMatchObject({ lengths: 'metric' });
});

test('what is not understood is left for the schema to name', () => {
  for (const picture of [null, 4, [], { base: 4, bySurface: 'x', alsoServe: [null] }]) {
    expect(migrate({ picture })).toMatchObject({ picture });
  }
  expect(rateOf('24')).toBe('24');
});

test('the old document keeps its values', () => {
  const old = { picture: { base: { rate: 24 } } };
  migrate(old);
  expect(old).toEqual({ picture: { base: { rate: 24 } } });
});
