import fc from 'fast-check';
import { expect, test } from 'vitest';
import { greatestCommonDivisor } from '../../../../src/calc/runs/search/largest-divisor';

test('greatestCommonDivisor of 1071 and 462 is 21, and with 0 the number itself', () => {
  // 1071 = 3 * 3 * 7 * 17, 462 = 2 * 3 * 7 * 11.
  expect([greatestCommonDivisor(1071, 462), greatestCommonDivisor(0, 5), greatestCommonDivisor(5, 0)]).toEqual([
    21, 5, 5,
  ]);
});

test('greatestCommonDivisor divides both, and what is left has no divisor in common', () => {
  const number = fc.integer({ min: 1, max: 2000 });
  fc.assert(
    fc.property(number, number, (a, b) => {
      const divisor = greatestCommonDivisor(a, b);
      const common = (n: number) => a % n === 0 && b % n === 0;
      let largest = 1;
      for (let n = 1; n <= Math.min(a, b); n++) if (common(n)) largest = n;
      expect(divisor).toBe(largest);
    }),
  );
});
