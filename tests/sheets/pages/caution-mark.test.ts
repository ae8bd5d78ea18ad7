import { expect, test } from 'vitest';
import { cautionMark } from '../../../src/sheets/pages/caution-mark';
import { outside } from './page-boxes';

test('cautionMark is a triangle with a filled sign in it, within its square', () => {
  const [rim, sign] = cautionMark(10, 20, 4);
  expect(rim!.lines.ends).toHaveLength(1);
  expect(rim!.lines.xyMm).toHaveLength(6);
  expect([rim!.fill, sign!.fill, sign!.stroke]).toEqual([null, '#000000', null]);
  expect(outside(cautionMark(10, 20, 4), { leftMm: 10, topMm: 20, rightMm: 14.1, bottomMm: 24 })).toEqual([]);
});
