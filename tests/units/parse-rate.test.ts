import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatRate } from '../../src/units/format-rate';
import { parseRate } from '../../src/units/parse-rate';

test.each([
  ['23.976', 24_000, 1001],
  ['23.98', 24_000, 1001],
  ['23,976', 24_000, 1001],
  ['29.97', 30_000, 1001],
  ['47.952', 48_000, 1001],
  ['47.95', 48_000, 1001],
  ['59.94', 60_000, 1001],
  ['119.88', 120_000, 1001],
  ['48', 48, 1],
  ['30.00', 30, 1],
  ['60 fps', 60, 1],
  ['50Hz', 50, 1],
  ['12.5', 25, 2],
  ['60000/1001', 60_000, 1001],
  ['120/2', 60, 1],
  ['1000000', 1_000_000, 1],
  ['1/10000', 1, 10_000],
])('parseRate(%s) is %i frames in %i seconds', (text, frames, seconds) => {
  expect(parseRate(text)).toEqual({ rate: { frames, seconds } });
});

test.each(['', 'fast', '0', '24/0', '-24', '1e3', '24.5.1', '9999999', '1/20000', '24 kg', '1,234,5'])(
  'parseRate refuses %s with a sentence',
  (text) => {
    expect(parseRate(text)).toEqual({ refused: 'A frame rate is a number such as 24, 23.976 or 60000/1001.' });
  },
);

test('parseRate gives back every whole rate and every rate of the 1000/1001 family exactly', () => {
  const rates = fc.oneof(
    fc.record({ frames: fc.integer({ min: 1, max: 1000 }), seconds: fc.constant(1) }),
    fc.record({ frames: fc.constantFrom(24, 30, 48, 60, 120).map((n) => n * 1000), seconds: fc.constant(1001) }),
  );
  fc.assert(fc.property(rates, (rate) => void expect(parseRate(formatRate(rate))).toEqual({ rate })));
});
