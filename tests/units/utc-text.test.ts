import fc from 'fast-check';
import { expect, test } from 'vitest';
import { utcText } from '../../src/units/utc-text';

test.each([
  [0, '1970-01-01 00:00'],
  [951_827_696_000, '2000-02-29 12:34'],
  [4_107_542_399_999, '2100-02-28 23:59'],
  [4_107_542_400_000, '2100-03-01 00:00'],
])('utcText of %i is %s', (atMs, text) => {
  expect(utcText(atMs)).toBe(text);
});

test('utcText says what the calendar of the language says, for every moment that a tick can have', () => {
  const moment = fc.oneof(fc.integer({ min: 0, max: 8_640_000_000_000_000 }), fc.integer({ min: 0, max: 4e12 }));
  fc.assert(
    fc.property(moment, (atMs) => {
      // Years past 9999 have a sign and six digits there.
      const iso = new Date(atMs).toISOString().replace(/^\+0*/, '');
      expect(utcText(atMs)).toBe(iso.replace('T', ' ').replace(/:\d\d\.\d+Z$/, ''));
    }),
    { numRuns: 1000 },
  );
});
