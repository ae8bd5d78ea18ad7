import { expect, test } from 'vitest';
import { readSpelling } from '../../src/units/read-spelling';

test('readSpelling takes the longest spelling, in either case', () => {
  expect(readSpelling(' mm', 'length')).toEqual({ spelling: 'mm', rest: '' });
  expect(readSpelling('MM', 'length')).toEqual({ spelling: 'mm', rest: '' });
  expect(readSpelling('inches', 'length')).toEqual({ spelling: 'inches', rest: '' });
  expect(readSpelling('M px', 'pixels')).toEqual({ spelling: 'M px', rest: '' });
});

test('readSpelling stops where the next number begins', () => {
  expect(readSpelling(' ft 6', 'length')).toEqual({ spelling: 'ft', rest: '6' });
  expect(readSpelling('ft6', 'length')).toEqual({ spelling: 'ft', rest: '6' });
  expect(readSpelling(`'6"`, 'length')).toEqual({ spelling: "'", rest: '6"' });
  expect(readSpelling(' 6', 'length')).toEqual({ spelling: '', rest: '6' });
});

test('readSpelling names a unit that measures something else', () => {
  expect(readSpelling('kg', 'length')).toEqual({
    refused: `kg is a mass; a length belongs here, such as 7.3 m, 500 mm or 24' 6".`,
  });
  expect(readSpelling('m2', 'length')).toMatchObject({ refused: expect.stringContaining('m2 is an area') });
  expect(readSpelling('parsec', 'length')).toMatchObject({ refused: expect.stringContaining(`'parsec' is no unit`) });
});
