import { expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/run-command-line';
import { givenTerminal } from './given-terminal';

test.each([[[]], [['help']], [['--help']], [['-h']]])('runCommandLine(%j) gives help', (words) => {
  const terminal = givenTerminal();
  expect(runCommandLine(words, terminal)).toBe(0);
  expect(terminal.output()).toContain('check PLAN.json [--json]');
  expect(terminal.complaints()).toBe('');
});

test.each([
  [['weigh'], 'there is no command weigh'],
  [['check'], 'check wants a file'],
  [['check', 'a.json', '--yaml'], 'check knows no option --yaml'],
  [['schema', 'a.json'], 'schema wants no file: a.json'],
])('runCommandLine(%j) ends with 2 and says why on standard error alone', (words, reason) => {
  const terminal = givenTerminal();
  expect(runCommandLine(words, terminal)).toBe(2);
  expect(terminal.complaints()).toContain(reason);
  expect(terminal.complaints()).toContain('npm run -s voussoir -- ');
  expect(terminal.output()).toBe('');
});
