import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tickFileText } from '../../src/files/tick-file';
import { parseTickList } from '../../src/plan/parse-tick-list';
import { tickList } from '../arbitraries/tick';

const head = { format: 'voussoir-ticks', version: 1, planId: 'plan-1', planName: 'Stage' };
const tick = { step: 'wired', of: 'port', name: '3B-04', done: true, who: 'Ada', atMs: 1000 };
const parse = (value: unknown) => parseTickList(JSON.stringify(value));

test('parseTickList reads every list that a file holds', () => {
  fc.assert(
    fc.property(tickList, (list) => {
      expect(parseTickList(tickFileText(list))).toEqual({ list });
    }),
  );
});

test.each([
  ['a plan', { format: 'voussoir-plan', version: 3 }, 'not-ticks', undefined],
  ['nothing', null, 'not-ticks', undefined],
  ['a list', [tick], 'not-ticks', undefined],
  ['a later version', { ...head, version: 2, more: 1 }, 'newer', 'version'],
  ['no version', { ...head, version: undefined, ticks: [] }, 'invalid', 'version'],
  ['no ticks', head, 'invalid', 'ticks'],
  ['an unknown field', { ...head, ticks: [], more: 1 }, 'invalid', 'more'],
  ['an unknown step', { ...head, ticks: [tick, { ...tick, step: 'painted' }] }, 'invalid', 'ticks[1].step'],
  ['a moment with a fraction', { ...head, ticks: [{ ...tick, atMs: 0.5 }] }, 'invalid', 'ticks[0].atMs'],
])('parseTickList names %s', (_what, value, refused, path) => {
  expect(parse(value)).toMatchObject({ refused, ...(path === undefined ? {} : { path }) });
});

test('parseTickList names a file that was cut anywhere, and never throws', () => {
  const text = tickFileText({
    ...head,
    format: 'voussoir-ticks',
    version: 1,
    ticks: [{ ...tick, step: 'wired', of: 'port' }],
  });
  for (let end = 1; end < text.trimEnd().length; end++) {
    expect(parseTickList(text.slice(0, end))).toMatchObject({ refused: 'cut-short' });
  }
  fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (any) => void parseTickList(any)));
});
