import { expect, test } from 'vitest';
import { heading } from '../../../src/sheets/pages/heading';
import { outside, textsOf } from './page-boxes';

const body = { leftMm: 20, topMm: 10, rightMm: 200, bottomMm: 280 };

test('heading says the title and the side, over a line', () => {
  const { items, bottomMm } = heading('Wall A', 'drawn from behind', body);
  expect(textsOf(items)).toEqual(['Wall A', 'drawn from behind']);
  expect(outside(items, { ...body, bottomMm })).toEqual([]);
});

test('heading breaks a long title, and goes as far down as it needs', () => {
  const short = heading('Wall A', null, body);
  const long = heading('Wall '.repeat(40), 'drawn from behind '.repeat(8), body);
  expect(long.bottomMm).toBeGreaterThan(short.bottomMm + 5);
  expect(outside(long.items, { ...body, bottomMm: long.bottomMm })).toEqual([]);
});
