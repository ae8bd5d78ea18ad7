import { expect, test } from 'vitest';
import { computePicture } from '../../../src/calc/picture/compute-picture';
import type { Picture } from '../../../src/plan/picture';
import { mode } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

const wall = plainSurface({ letter: 'A', columns: 4, bands: [{ type: plainType(100), rows: 3 }] });
const ceiling = plainSurface({ letter: 'B', kind: 'ceiling', columns: 2, bands: [{ type: plainType(50), rows: 2 }] });
const picture = (rest: Partial<Picture>): Picture => ({ base: mode(24, 10), bySurface: [], alsoServe: [], ...rest });

test('computePicture counts pixels and multiplies them by rate, pictures, three colours and depth', () => {
  const results = computePicture({ picture: picture({}), surfaces: setOf(wall, ceiling) });
  // 12 panels of 100 x 100; 4 of 50 x 50. 120,000 x 24 x 30 = 86.4 Mbit/s; 10,000 x 24 x 30 = 7.2 Mbit/s.
  expect(results.surfaces.map(({ pixels }) => pixels)).toEqual([120_000, 10_000]);
  expect(results.surfaces.map(({ rateBps }) => rateBps)).toEqual([86_400_000, 7_200_000]);
  expect(results.pixels).toBe(130_000);
  expect(results.rateBps).toBe(93_600_000);
});

test('computePicture counts interleaved pictures and x1000/1001 rates exactly', () => {
  const base = mode(24_000, 8, 2, 1001);
  const { rateBps } = computePicture({ picture: picture({ base }), surfaces: setOf(wall) });
  // 120,000 x 2 x 24 x 24,000 / 1001
  expect(rateBps).toBeCloseTo((120_000 * 2 * 24 * 24_000) / 1001, 3);
});

test('computePicture lets a surface differ from the stage', () => {
  const bySurface = [{ surfaceId: 'b', mode: mode(30) }];
  const { surfaces } = computePicture({ picture: picture({ bySurface }), surfaces: setOf(wall, ceiling) });
  expect(surfaces.map(({ mode: fed }) => fed.rate.frames)).toEqual([24, 30]);
});

test('computePicture lists what a surface must serve once, what runs first', () => {
  const alsoServe = [
    { id: 's1', mode: mode(48_000, 10, 1, 2000), surfaceIds: null },
    { id: 's2', mode: mode(60), surfaceIds: ['b'] },
    { id: 's3', mode: mode(60, 8, 1), surfaceIds: ['b'] },
  ];
  const { surfaces } = computePicture({ picture: picture({ alsoServe }), surfaces: setOf(wall, ceiling) });
  // 48,000 in 2000 s is 24: what runs already.
  expect(surfaces[0]?.served).toEqual([mode(24, 10)]);
  expect(surfaces[1]?.served).toEqual([mode(24, 10), mode(60)]);
});
