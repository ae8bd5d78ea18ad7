import { expect, test } from 'vitest';
import { findEntries } from '../../../src/ui/bench/find-entries';
import { fakeEvaluation, somePlan } from '../state/fake-bench';

const evaluation = fakeEvaluation(somePlan);
const find = (query: string) => findEntries(query, evaluation, ['Undo', 'Print']).map(({ label }) => label);

test('findEntries without words lists every page and command', () => {
  expect(find('')).toEqual(expect.arrayContaining(['Wish', 'Materials', 'Undo', 'Print']));
});

test('findEntries puts a name in the stage first', () => {
  expect(find('c3 r2')[0]).toBe('Panel C3 R2');
});

test('findEntries finds pages and commands by a part of their words', () => {
  expect(find('pow')).toContain('Power');
  expect(find('prin')).toEqual(['Print']);
});

test('findEntries lists ports that begin so, each once', () => {
  const port = evaluation.runs.results.runs[0]!.port;
  const found = find(port);
  expect(found.filter((label) => label === `Port ${port}`)).toHaveLength(1);
  expect(find(port.slice(0, 2)).length).toBeGreaterThan(1);
});

test('findEntries finds nothing for nonsense', () => {
  expect(find('xyzzy')).toEqual([]);
});
