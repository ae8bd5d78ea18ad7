import { expect, test } from 'vitest';
import type { DisplayOptions } from '../../src/units/display-options';
import { formatSentence } from '../../src/units/format-sentence';

const metric: DisplayOptions = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' };

test('formatSentence writes measured, limit and named values each in its unit', () => {
  const said = {
    sentence: 'The wall stands {measured} of {limit} and weighs {mass}.',
    measured: 7000,
    limit: 8000,
    unit: 'mm' as const,
    values: { mass: { value: 9450, unit: 'kg' as const } },
  };
  expect(formatSentence(said, metric)).toBe('The wall stands 7.00 m of 8.00 m and weighs 9450 kg.');
});

test('formatSentence says what is not known and what nobody stated', () => {
  const said = { sentence: '{measured} of {limit}', measured: null, limit: null, unit: 'A' as const };
  expect(formatSentence(said, metric)).toBe('not known of not stated');
});

test('formatSentence gives two figures that differ more digits before it writes them alike', () => {
  const said = { sentence: '{measured} of {limit}', measured: 1.0004, limit: 1, unit: 'share' as const };
  expect(formatSentence(said, metric)).toBe('100.04 % of 100 %');
});

test('formatSentence leaves a token that names nothing, inherited names too', () => {
  const said = { sentence: '{pitch} {constructor}', measured: 1, limit: 1, unit: 'mm' as const, values: {} };
  expect(formatSentence(said, metric)).toBe('{pitch} {constructor}');
});
