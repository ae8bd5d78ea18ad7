import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readPlan } from '../../src/cli/read-plan';
import { givenTerminal } from './given-terminal';

const sample = readFileSync('fixtures/plans/flat.json', 'utf8');

test('readPlan gives the plan of a file and says nothing', () => {
  const terminal = givenTerminal({ 'a.json': sample });
  expect(readPlan('a.json', terminal)?.format).toBe('voussoir-plan');
  expect(terminal.complaints()).toBe('');
});

test.each([
  ['{', 'cut-short', null],
  ['hello', 'not-json', null],
  ['{"format":"other"}', 'not-a-plan', null],
  [sample.replace(/"version": \d+/, '"version": 99'), 'newer', 'version'],
  [sample.replace(/"columns": \d+/, '"columns": 0'), 'invalid', 'walls[0].path[0].columns'],
])('readPlan of a broken file names the reason and the path (%#)', (text, reason, path) => {
  const terminal = givenTerminal({ 'a.json': text });
  expect(readPlan('a.json', terminal)).toBeNull();
  const lines = terminal.complaints().split('\n');
  expect(lines[0]).toMatch(/^voussoir: a\.json: .+/);
  expect(lines.slice(1)).toEqual(
    path === null ? [`reason: ${reason}`, ''] : [`reason: ${reason}`, `path: ${path}`, ''],
  );
});
