import { expect, test } from 'vitest';
import type { Check } from '../../../src/calc/chapter';
import { compareChecks } from '../../../src/calc/compare/compare-checks';

const check = (given: Partial<Check>): Check => ({
  id: 'runs.reach.A',
  chapter: 'runs',
  severity: 'watch',
  measured: 2500,
  limit: 2100,
  unit: 'mm',
  where: [{ kind: 'port', name: '1-01' }],
  sentence: 'An entry stands at {measured}.',
  ...given,
});
const said = (severity: string) => [`${severity}: `, 'An entry stands at ', { value: 2500, unit: 'mm' }, '.'];

test('compareChecks lists those that appeared and those that went', () => {
  const appeared = { kind: 'added', what: 'check', name: 'runs.reach.A', before: null, after: said('watch') };
  expect(compareChecks([], [check({})])).toEqual([appeared]);
  expect(compareChecks([check({})], [])).toEqual([
    { ...appeared, kind: 'removed', before: said('watch'), after: null },
  ]);
});

test('compareChecks takes a check that passes as one that says nothing', () => {
  expect(compareChecks([], [check({ severity: 'pass' })])).toEqual([]);
  expect(compareChecks([check({ severity: 'pass' })], [check({ severity: 'stop' })])).toMatchObject([
    { kind: 'added', after: said('stop') },
  ]);
});

test('compareChecks lists a check that became worse', () => {
  expect(compareChecks([check({})], [check({ severity: 'stop' })])).toEqual([
    { kind: 'changed', what: 'check', name: 'runs.reach.A', before: said('watch'), after: said('stop') },
  ]);
});

test('compareChecks is silent about a check that stays, whatever its figures and places are now', () => {
  const now = check({ measured: 2600, where: [{ kind: 'port', name: '1-02' }], sentence: 'Another {measured}.' });
  expect(compareChecks([check({})], [now])).toEqual([]);
});

test('compareChecks takes what says the same of the same things as the same check, whatever its id and field', () => {
  const old = check({ id: 'wish.stock.p1', where: [{ kind: 'field', name: 'wish.stock[0].owned' }] });
  const now = check({ id: 'wish.stock.p2', where: [{ kind: 'field', name: 'wish.stock[3].owned' }] });
  expect(compareChecks([old], [now])).toEqual([]);
});
