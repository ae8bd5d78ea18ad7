import { expect, test } from 'vitest';
import { containers } from '../../../src/calc/links/container';

test('containers are the rasters of the fixed modes, each once, fewest pixels first', () => {
  const rasters = containers.map(({ width, height }) => `${width}x${height}`);
  expect(new Set(rasters).size).toBe(rasters.length);
  expect(rasters).toEqual(expect.arrayContaining(['1920x1080', '3840x2160', '4096x2160', '7680x4320']));
  expect([rasters[0], rasters.at(-1)]).toEqual(['1280x720', '10240x4320']);
});

// CTA-861: code 97 is 3840 x 2160 at 60, code 16 1920 x 1080 at 60.
test('containers are called by their mode of 60 frames a second', () => {
  const named = (width: number, height: number) =>
    containers.find((container) => container.width === width && container.height === height)?.id;
  expect(named(3840, 2160)).toBe('cta-97');
  expect(named(1920, 1080)).toBe('cta-16');
});
