import fc from 'fast-check';
import { expect, test } from 'vitest';
import { restingText } from '../../../src/ui/widgets/resting-text';

test.each([
  ['3400000', '3\u202f400\u202f000'],
  ['-38000.5', '-38\u202f000.5'],
  ['1234', '1234'],
  ['2.690977604', '≈ 2.691'],
  ['-9.575', '-9.575'],
  ['0.0000001', '0.0000001'],
  ['24\' 6 1/2"', '24\' 6 1/2"'],
  ['1e+21', '1e+21'],
  ['', ''],
])('restingText writes %s as %s', (exact, shown) => {
  expect(restingText(exact)).toBe(shown);
});

test('restingText says of every figure that it changes that it does', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (value) => {
      const exact = String(Number(value.toPrecision(12)));
      const shown = restingText(exact);
      if (!shown.startsWith('≈')) expect(Number(shown.replaceAll('\u202f', ''))).toBe(Number(exact));
    }),
  );
});
