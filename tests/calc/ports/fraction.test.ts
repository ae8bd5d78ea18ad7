import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asNumber, compared, divided, fractionOf, minus, times, wholePart } from '../../../src/calc/ports/fraction';

const one = fractionOf(1);

test('fractionOf takes a decimal for what it says', () => {
  expect(compared(fractionOf(0.1), { over: 1n, under: 10n })).toBe(0);
  expect(compared(fractionOf(1e-7), { over: 1n, under: 10_000_000n })).toBe(0);
  expect(compared(fractionOf(2.5e21), { over: 25n * 10n ** 20n, under: 1n })).toBe(0);
  expect(compared(fractionOf(-0.5), { over: -1n, under: 2n })).toBe(0);
});

// 650,000 x (1 - 0.29) is 461,500 exactly; in floating point (1 - 0.29) x 650,000 falls short of it.
test('wholePart loses nothing where a floating-point product would', () => {
  expect(wholePart(times(fractionOf(650_000), minus(one, fractionOf(0.29))))).toBe(461_500);
  expect(Math.floor(4.35 * 100)).toBe(434);
  expect(wholePart(times(fractionOf(4.35), fractionOf(100)))).toBe(435);
});

test('asNumber is exact for whole numbers', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 50 }), fc.integer({ min: 1, max: 1000 }), (whole, under) => {
      expect(asNumber({ over: BigInt(whole) * BigInt(under), under: BigInt(under) })).toBe(whole);
    }),
  );
});

test('divided undoes times, and compared orders as the numbers do', () => {
  const decimal = fc.integer({ min: 1, max: 1_000_000 }).map((n) => n / 1000);
  fc.assert(
    fc.property(decimal, decimal, (a, b) => {
      const [x, y] = [fractionOf(a), fractionOf(b)];
      expect(compared(divided(times(x, y), y), x)).toBe(0);
      expect(compared(x, y)).toBe(Math.sign(a - b));
      expect(asNumber(divided(x, y))).toBeCloseTo(a / b, 6);
    }),
  );
});

test('divided by a negative ratio keeps the denominator above zero', () => {
  expect(divided(one, fractionOf(-2))).toEqual({ over: -1n, under: 2n });
});
