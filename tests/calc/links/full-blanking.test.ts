import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fullBlanking } from '../../../src/calc/links/full-blanking';
import { publishedTimings } from './published-timings';

const published = publishedTimings('full');

// Source: fixtures/reference/cvt-timings.json, printed by an outside program, the command in every row.
test.each(published)('fullBlanking prints what the program prints: $command', (row) => {
  const timing = fullBlanking(row.width, row.height, row.rate)!;
  expect([timing.totalWidth, timing.totalHeight]).toEqual([row.hTotal, row.vTotal]);
  expect(Math.round(timing.pixelClockHz / 1000)).toBe(row.clockKHz);
});

test('fullBlanking widens an odd canvas to whole cells of 8 pixels, so that the raster holds it', () => {
  const odd = fullBlanking(1913, 1080, { frames: 60, seconds: 1 });
  expect(odd).toEqual(fullBlanking(1920, 1080, { frames: 60, seconds: 1 }));
});

test('fullBlanking is null where a frame is no longer than its least sync and back porch', () => {
  // 550 microseconds: 1,000,000 / 550 is 1818.2 frames a second.
  expect(fullBlanking(100, 100, { frames: 1819, seconds: 1 })).toBeNull();
  expect(fullBlanking(100, 100, { frames: 1818, seconds: 1 })).not.toBeNull();
});

test('fullBlanking leaves a fifth of every line blank, to two cells, and 550 microseconds of every frame', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 640, max: 20_000 }),
      fc.integer({ min: 200, max: 20_000 }),
      fc.integer({ min: 1, max: 240 }),
      (canvasWidth, height, fps) => {
        const { width, totalWidth, totalHeight, pixelClockHz } = fullBlanking(canvasWidth, height, {
          frames: fps,
          seconds: 1,
        })!;
        expect(totalWidth - width).toBeGreaterThan(0.2 * totalWidth - 16);
        const lineS = totalWidth / pixelClockHz;
        expect((totalHeight - height - 3) * lineS).toBeGreaterThan(550e-6 * (1 - 1e-3));
      },
    ),
  );
});
