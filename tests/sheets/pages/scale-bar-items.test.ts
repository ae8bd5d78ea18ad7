import { expect, test } from 'vitest';
import { scaleBarHeightMm, scaleBarItems } from '../../../src/sheets/pages/scale-bar-items';
import { itemBox, outside, textsOf } from './page-boxes';

const format = (mm: number) => `${mm / 1000} m`;

test.each([
  // Longest 1, 2 or 5 of a power of ten within 62 mm of paper; on paper it is that length over the reduction.
  [100, '5 m', 50],
  [50, '2 m', 40],
  [25, '1 m', 40],
  [20, '1 m', 50],
  [75, '2 m', 2000 / 75],
  [500, '20 m', 40],
])('the bar at 1:%i reads %s and measures true', (reduction, said, widthMm) => {
  const items = scaleBarItems(20, 30, reduction, 'metric', format);
  expect(textsOf(items)).toEqual(['0', said]);
  const outline = items.find((item) => item.kind === 'path' && item.fill === null)!;
  const { leftMm, rightMm } = itemBox(outline);
  expect(rightMm - leftMm).toBeCloseTo(widthMm, 3);
  expect(
    outside(items, { leftMm: 19.8, topMm: 30, rightMm: 20.2 + widthMm, bottomMm: 30.2 + scaleBarHeightMm }),
  ).toEqual([]);
});

test('the bar of a plan in feet is a round number of feet', () => {
  const items = scaleBarItems(0, 0, 100, 'feet', (mm) => `${mm / 304.8} ft`);
  // 20 ft are 6096 mm, 60.96 mm at 1:100.
  expect(textsOf(items)).toEqual(['0', '20 ft']);
});
