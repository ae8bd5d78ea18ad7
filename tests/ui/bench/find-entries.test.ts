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

test.each([
  ['distro 1', 'Distro 1'],
  ['N1', 'Node N1'],
  ['port 1a-01', 'Port 1A-01'],
  ['1a', 'Breakout 1A'],
  ['l2', 'Leg L2'],
  ['what goes', 'What goes dark'],
])('findEntries puts %j first where it is the name of one thing', (query, label) => {
  expect(find(query)[0]).toBe(label);
});

test('findEntries lists parts whose names begin so', () => {
  expect(find('dist')).toContain('Distro 1');
  expect(find('leg l1')).toEqual(['Leg L1', 'Leg L1 of distro 1']);
});

test('findEntries finds nothing for nonsense', () => {
  expect(find('xyzzy')).toEqual([]);
});
