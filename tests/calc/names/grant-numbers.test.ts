import fc from 'fast-check';
import { expect, test } from 'vitest';
import { grantNumbers } from '../../../src/calc/names/grant-numbers';

test('grantNumbers without claims numbers from 1, or on from the highest that is held', () => {
  expect(grantNumbers(3, [], 0)).toEqual([1, 2, 3]);
  expect(grantNumbers(2, [], 7)).toEqual([8, 9]);
});

test('grantNumbers gives a number to the thing for which most speaks, and the others new ones', () => {
  // Eleven ports of processor 1 and two of processor 2 are in the first thing, eleven of processor 2 in the second.
  const claims = [
    { thing: 0, number: 1, weight: 11 },
    { thing: 0, number: 2, weight: 2 },
    { thing: 1, number: 2, weight: 11 },
  ];
  expect(grantNumbers(3, claims, 2)).toEqual([1, 2, 3]);
});

test('grantNumbers adds claims of the same number up', () => {
  const claims = [
    { thing: 0, number: 5, weight: 3 },
    { thing: 1, number: 5, weight: 2 },
    { thing: 1, number: 5, weight: 2 },
  ];
  expect(grantNumbers(2, claims, 5)).toEqual([6, 5]);
});

test('grantNumbers gives a thing its second best number where another has the best', () => {
  const claims = [
    { thing: 0, number: 1, weight: 9 },
    { thing: 1, number: 1, weight: 5 },
    { thing: 1, number: 2, weight: 1 },
  ];
  expect(grantNumbers(2, claims, 2)).toEqual([1, 2]);
});

test('grantNumbers never gives a number twice', () => {
  const claim = fc.record({
    thing: fc.nat(5),
    number: fc.integer({ min: 1, max: 8 }),
    weight: fc.integer({ min: 1, max: 9 }),
  });
  fc.assert(
    fc.property(fc.array(claim), (claims) => {
      const numbers = grantNumbers(6, claims, 8);
      expect(new Set(numbers).size).toBe(6);
      for (const [thing, number] of numbers.entries()) {
        if (number <= 8) expect(claims.some((each) => each.thing === thing && each.number === number)).toBe(true);
      }
    }),
  );
});
