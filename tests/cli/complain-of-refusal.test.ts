import { expect, test } from 'vitest';
import { complainOfRefusal } from '../../src/cli/complain-of-refusal';
import { givenTerminal } from './given-terminal';

test('complainOfRefusal gives the sentence, the reason and the path, a line each, on standard error', () => {
  const terminal = givenTerminal();
  complainOfRefusal('a.json', { refused: 'invalid', path: 'walls[0].baseMm', sentence: 'Invalid.' }, terminal);
  expect(terminal.complaints()).toBe('voussoir: a.json: Invalid.\nreason: invalid\npath: walls[0].baseMm\n');
  expect(terminal.output()).toBe('');
});

test('complainOfRefusal leaves the path out where there is none', () => {
  const terminal = givenTerminal();
  complainOfRefusal('a.json', { refused: 'not-json', sentence: 'Not JSON.' }, terminal);
  expect(terminal.complaints()).toBe('voussoir: a.json: Not JSON.\nreason: not-json\n');
});
