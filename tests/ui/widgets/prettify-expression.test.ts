import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { prettifyExpression } from '../../../src/ui/widgets/prettify-expression';

const plain = (value: number) => String(value);

test.each([
  ['a * b / c', { a: 6, b: 4, c: 3 }, 'a × b ÷ c', '6 × 4 ÷ 3'],
  ['floor(c * (1 - f) / p)', { c: 512000, f: 0.1, p: 36864 }, '⌊ c × (1 − f) ÷ p ⌋', '⌊ 512000 × (1 − 0.1) ÷ 36864 ⌋'],
  ['ceil(n / m)', { n: 7, m: 2 }, '⌈ n ÷ m ⌉', '⌈ 7 ÷ 2 ⌉'],
  ['a / (b / c)', { a: 1, b: 2, c: 3 }, 'a ÷ (b ÷ c)', '1 ÷ (2 ÷ 3)'],
  ['a - (b - c)', { a: 1, b: 2, c: 3 }, 'a − (b − c)', '1 − (2 − 3)'],
  ['(a + b) * c', { a: 1, b: 2, c: 3 }, '(a + b) × c', '(1 + 2) × 3'],
  ['sqrt(a^2 + b^2)', { a: 3, b: 4 }, '√(a² + b²)', '√(3² + 4²)'],
  ['2 * r * sin(pi / n)', { r: 5, n: 8 }, '2 × r × sin(π ÷ n)', '2 × 5 × sin(π ÷ 8)'],
  ['a - b', { a: 1, b: -2 }, 'a − b', '1 − −2'],
  ['a^b', { a: -2, b: 2 }, 'a^b', '(−2)²'],
  ['min(a, b)', { a: 1, b: 2 }, 'min(a, b)', 'min(1, 2)'],
] as const)('prettifyExpression of %s', (expression, numbers, names, inNumbers) => {
  expect(prettifyExpression(expression, numbers, plain)).toEqual({ names, numbers: inNumbers });
});

test('an expression without names is written once', () => {
  expect(prettifyExpression('2 * 3', {}, plain)).toEqual({ names: null, numbers: '2 × 3' });
});

test.each(['a +', 'a b', '2 $ 3', '(a', ''])('%j is no arithmetic and stays as it stands', (text) => {
  expect(prettifyExpression(text, { a: 1 }, plain)).toEqual({ names: null, numbers: text });
});

/** The pretty signs back into those that a maths library reads. */
const backToPlain = (text: string) =>
  text
    .replaceAll('−', '-')
    .replaceAll('×', '*')
    .replaceAll('÷', '/')
    .replaceAll('⌊', 'floor(')
    .replaceAll('⌋', ')')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('⁴', '^4')
    .replaceAll('√', 'sqrt');

const names = ['a', 'b', 'c'] as const;
const tree = fc.letrec<{ text: string }>((tie) => ({
  text: fc.oneof(
    { maxDepth: 4 },
    fc.oneof(fc.constantFrom(...names), fc.integer({ min: 1, max: 9 }).map(String)),
    fc
      .tuple(tie('text'), fc.constantFrom('+', '-', '*', '/', '^'), tie('text'))
      .map(([left, sign, right]) => `(${left}) ${sign} (${right})`),
    tie('text').map((inner) => `-(${inner})`),
    tie('text').map((inner) => `floor(${inner})`),
  ),
})).text;

test('the printed line means the same as the expression, by a maths library', () => {
  const numbers = fc.record({
    a: fc.integer({ min: -9, max: 9 }),
    b: fc.integer({ min: 1, max: 9 }),
    c: fc.constant(2.5),
  });
  fc.assert(
    fc.property(tree, numbers, (text, values) => {
      const printed = prettifyExpression(text, values, plain).numbers;
      const said: unknown = evaluate(backToPlain(printed));
      const meant: unknown = evaluate(text, { ...values });
      // Roots of negative numbers are complex, and so no figure of a plan.
      fc.pre(typeof meant === 'number' && Number.isFinite(meant));
      expect(said).toBeCloseTo(meant as number, 6);
    }),
    { numRuns: 400 },
  );
});
