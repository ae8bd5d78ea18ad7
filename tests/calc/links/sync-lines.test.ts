import { expect, test } from 'vitest';
import { syncLines } from '../../../src/calc/links/sync-lines';

// VESA CVT: 4:3 is 4 lines, 16:9 5, 16:10 6, 5:4 and 15:9 7, any other 10.
test.each([
  [1600, 1200, 4],
  [1920, 1080, 5],
  [1920, 1200, 6],
  [1280, 1024, 7],
  [1280, 768, 7],
  [2808, 2808, 10],
  [1921, 1080, 10],
])('syncLines of %d x %d are %d', (width, height, lines) => {
  expect(syncLines(width, height)).toBe(lines);
});
