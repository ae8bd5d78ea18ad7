import { expect, test } from 'vitest';
import { baselineMm, linesHeightMm, writeLines, writeText } from '../../../src/sheets/pages/write-text';
import { outside } from './page-boxes';

const style = { face: 'sans', sizeMm: 10, colour: '#000000' } as const;

test('writeText stands capitals in the middle of a line of 1.3 ems', () => {
  // Capitals are 0.698 em high: 13 mm less 6.98 mm leaves 3.01 mm above and below them.
  expect(writeText('A', 5, 100, style)).toMatchObject({ xMm: 5, yMm: 109.99, align: 'start', turned: false });
  expect(baselineMm(style)).toBeCloseTo(9.99, 9);
});

test('writeLines stands lines one under the other, none out of the height that linesHeightMm gives', () => {
  const lines = writeLines(['Äg', 'Åj'], 0, 0, style);
  expect(lines[1]!.yMm - lines[0]!.yMm).toBeCloseTo(13, 9);
  expect(linesHeightMm(style, 2)).toBe(26);
  expect(outside(lines, { leftMm: 0, topMm: 0, rightMm: 100, bottomMm: 26 })).toEqual([]);
});
