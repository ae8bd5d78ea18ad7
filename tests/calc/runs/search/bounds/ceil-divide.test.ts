import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ceilDivide } from '../../../../../src/calc/runs/search/bounds/ceil-divide';

test('ceilDivide rounds up what is over', () => {
  expect([ceilDivide(0, 7), ceilDivide(169, 10), ceilDivide(170, 10), ceilDivide(171, 10)]).toEqual([0, 17, 17, 18]);
});

test('ceilDivide is exact for whole numbers below 2^53, as whole-number arithmetic has it', () => {
  fc.assert(
    fc.property(fc.maxSafeNat(), fc.integer({ min: 1, max: 2 ** 31 }), (amount, by) => {
      fc.pre(amount + by < Number.MAX_SAFE_INTEGER);
      const exact = (BigInt(amount) + BigInt(by) - 1n) / BigInt(by);
      expect(BigInt(ceilDivide(amount, by))).toBe(exact);
    }),
  );
});
