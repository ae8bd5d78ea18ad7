import { expect, test } from 'vitest';
import { pageStyle } from '../../../src/sheets/pages/page-style';
import { slotCounts, slotsIn, slotWidthMm } from '../../../src/sheets/pages/slots-in';

const body = { leftMm: 10, topMm: 20, rightMm: 210, bottomMm: 120 };

test('slotsIn parts a place into columns of equal width with a gap between', () => {
  const [left, right] = slotsIn(body, 2);
  expect(left).toEqual({ leftMm: 10, topMm: 20, rightMm: 110 - pageStyle.slotGapMm / 2, bottomMm: 120 });
  expect(right!.leftMm - left!.rightMm).toBeCloseTo(pageStyle.slotGapMm, 9);
  expect(right!.rightMm).toBeCloseTo(210, 9);
  expect(slotsIn(body, 1)).toEqual([body]);
});

test('slotWidthMm is the width of one of them', () => {
  expect(slotWidthMm(200, 2)).toBeCloseTo((200 - pageStyle.slotGapMm) / 2, 9);
});

test('slotCounts takes columns that a table has room in, and one always', () => {
  // In 400 mm: 400, 196, 128, 94 mm each.
  expect(slotCounts(400, 0)).toEqual([1, 2, 3, 4]);
  expect(slotCounts(400, 120)).toEqual([1, 2, 3]);
  expect(slotCounts(400, 500)).toEqual([1]);
  // Two columns on A4 are 83 mm wide each.
  expect(slotCounts(174, 0)).toEqual([1, 2]);
});
