import { expect, test } from 'vitest';
import { surfacePixels } from '../../../src/calc/picture/surface-pixels';
import { plainSurface, plainType } from '../zones/plain-surface';

const wall = plainSurface({
  columns: 3,
  bands: [
    { type: plainType(200, 500), rows: 2 },
    { type: plainType(100, 500), rows: 1 },
  ],
  isHole: (column, row) => column === 2 && row === 1,
});

test('surfacePixels adds up the panels that are there, each with its own pixels', () => {
  // Five of 200 x 200 (one of six is a hole) and three of 100 x 100.
  expect(surfacePixels(wall)).toBe(5 * 40_000 + 3 * 10_000);
});
