import { expect, test } from 'vitest';
import { settleQuantity } from '../../src/units/settle-quantity';

test('settleQuantity keeps lengths in whole micrometres', () => {
  expect(settleQuantity(7315.2000004, 'mm')).toBe(7315.2);
  expect(settleQuantity(0.0004, 'mm')).toBe(0);
});

test('settleQuantity takes off what binary fractions add', () => {
  expect(settleQuantity(0.1 + 0.2, 'share')).toBe(0.3);
});

test('settleQuantity never gives -0', () => {
  expect(Object.is(settleQuantity(-0.0001, 'mm'), 0)).toBe(true);
  expect(Object.is(settleQuantity(-0, 'kg'), 0)).toBe(true);
});
