import { expect, test } from 'vitest';
import { isUnpriced } from '../../../src/calc/materials/is-unpriced';
import type { MaterialLine } from '../../../src/calc/materials/material-result';

const line = { priceEach: null, group: 'signal' } as MaterialLine;

test('isUnpriced: a line without a price that the catalogue could have', () => {
  expect(isUnpriced(line)).toBe(true);
  expect(isUnpriced({ ...line, priceEach: 0 })).toBe(false);
  expect(isUnpriced({ ...line, group: 'network' })).toBe(false);
});
