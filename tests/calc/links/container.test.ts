import { expect, test } from 'vitest';
import { containers } from '../../../src/calc/links/container';

test('containers are the rasters of the fixed modes, each once, fewest pixels first', () => {
  const ids = containers.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(expect.arrayContaining(['1920x1080', '3840x2160', '4096x2160', '7680x4320']));
  expect([ids[0], ids.at(-1)]).toEqual(['1280x720', '10240x4320']);
});
