import { expect, test } from 'vitest';
import { reducedBlanking1 } from '../../../src/calc/links/reduced-blanking-1';
import { publishedTimings } from './published-timings';

const published = publishedTimings('reduced-1');

// Source: fixtures/reference/cvt-timings.json, printed by an outside program, the command in every row.
test.each(published)('reducedBlanking1 prints what the program prints: $command', (row) => {
  const timing = reducedBlanking1(row.width, row.height, row.rate)!;
  expect([timing.totalWidth, timing.totalHeight]).toEqual([row.hTotal, row.vTotal]);
  expect(Math.round(timing.pixelClockHz / 1000)).toBe(row.clockKHz);
});

test('reducedBlanking1 widens an odd canvas to whole cells of 8 pixels, so that the raster holds it', () => {
  const odd = reducedBlanking1(2801, 2808, { frames: 60, seconds: 1 });
  expect(odd).toEqual(reducedBlanking1(2808, 2808, { frames: 60, seconds: 1 }));
  expect(odd?.width).toBe(2808);
});
