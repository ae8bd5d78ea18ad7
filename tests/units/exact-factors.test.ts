import { expect, test } from 'vitest';
import { exactFactors } from '../../src/units/exact-factors';

// Source: international yard and pound agreement of 1959, exact by definition, from memory.
test('inch, foot and pound are the exact ones', () => {
  expect(exactFactors.mmAnInch).toBe(25.4);
  expect(exactFactors.mmAFoot).toBe(304.8);
  expect(exactFactors.kgAPound).toBe(0.45359237);
  expect(exactFactors.m2ASquareFoot).toBeCloseTo(0.3048 ** 2, 15);
  expect(exactFactors.m3ACubicFoot).toBeCloseTo(0.3048 ** 3, 15);
});

// Source: 1 Btu(IT) = 1055.05585262 J; 12,000 Btu/h to a ton (fixtures of heat: 3.412142 and 3.516853).
test('watts come to BTU/h and tons by the International Table unit', () => {
  expect(1 / exactFactors.wattsABtuh).toBeCloseTo(3.412142, 6);
  expect(exactFactors.wattsATon / 1000).toBeCloseTo(3.516853, 6);
});

// Source: NIST SP 811, appendix B, from memory: pound-force per square foot to pascal, 4.788026 E+01.
test('a pound-force to the square foot is 47.88026 Pa', () => {
  expect(exactFactors.kpaAPsf * 1000).toBeCloseTo(47.88026, 5);
});
