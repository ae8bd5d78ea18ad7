import { expect, test } from 'vitest';
import { countedPixels } from '../../../../src/calc/runs/existing/counted-pixels';
import { plainSurface, plainType, setOf } from '../../zones/plain-surface';

const bands = [
  { type: plainType(200), rows: 2 },
  { type: plainType(100), rows: 1 },
];
const set = setOf(plainSurface({ letter: 'A', columns: 2, bands }), plainSurface({ letter: 'B', columns: 2, bands }));

test('countedPixels adds the pixels of each panel', () => {
  // Column 1 of A: 40,000 + 40,000 + 10,000.
  expect(countedPixels(set, [0, 1, 2], 'panels')).toBe(90_000);
});

test('countedPixels draws the smallest rectangle of the canvas round ragged panels', () => {
  // C1 R1, C1 R2 and C2 R2: 400 x 400.
  expect(countedPixels(set, [0, 1, 4], 'rectangle')).toBe(160_000);
  // C1 R2 and the half as wide C1 R3 on top of it: 200 wide, 300 high.
  expect(countedPixels(set, [1, 2], 'rectangle')).toBe(60_000);
});

test('countedPixels draws a rectangle on each surface for itself', () => {
  expect(countedPixels(set, [0, 6], 'rectangle')).toBe(80_000);
});
