import { expect, test } from 'vitest';
import { dimensionSegments } from '../../src/sheets/dimension-segments';

test('dimensionSegments gives the line, and a tick at 45 degrees through each end', () => {
  const level = { x1Mm: 100, y1Mm: 50, x2Mm: 500, y2Mm: 50, text: '400 mm' };
  expect(dimensionSegments(level, 10)).toEqual([
    [100, 50, 500, 50],
    [90, 40, 110, 60],
    [490, 40, 510, 60],
  ]);
});

test('dimensionSegments turns its ticks with the line, and draws them at a dimension of no length too', () => {
  const upright = { x1Mm: 0, y1Mm: 0, x2Mm: 0, y2Mm: 300, text: '300 mm' };
  expect(dimensionSegments(upright, 10)[2]).toEqual([10, 290, -10, 310]);
  const none = { x1Mm: 7, y1Mm: 7, x2Mm: 7, y2Mm: 7, text: '0 mm' };
  expect(dimensionSegments(none, 10).flat().every(Number.isFinite)).toBe(true);
});
