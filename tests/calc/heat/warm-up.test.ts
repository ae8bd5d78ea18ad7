import { expect, test } from 'vitest';
import { hallVolumeM3, warmUpMin } from '../../../src/calc/heat/warm-up';

const hall = { lengthMm: 30_000, widthMm: 26_000, clearHeightMm: 10_000, walkwayMm: 1200 };

test('hallVolumeM3 multiplies three sides, and is null where one is not stated', () => {
  expect(hallVolumeM3(hall)).toBeCloseTo(7800, 9);
  for (const side of ['lengthMm', 'widthMm', 'clearHeightMm']) {
    expect(hallVolumeM3({ ...hall, [side]: null })).toBeNull();
  }
});

test('warmUpMin: 300 kW warm 7800 m3 by 8 K in 4.2 min (by hand: 1.2 x 1006 x 7800 x 8 / 300 000 s = 251.1 s)', () => {
  expect(warmUpMin(300_000, 7800, 8)).toBeCloseTo(4.185, 3);
});

test('warmUpMin is null without a hall and without heat', () => {
  expect(warmUpMin(300_000, null, 8)).toBeNull();
  expect(warmUpMin(0, 7800, 8)).toBeNull();
});

test('warmUpMin is null where the heat is so little that the time is more than a number holds', () => {
  expect(warmUpMin(1e-310, 7800, 8)).toBeNull();
});
