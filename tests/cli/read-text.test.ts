import { expect, test } from 'vitest';
import { readText } from '../../src/cli/read-text';
import { givenTerminal } from './given-terminal';

test('readText gives a file as it is', () => {
  expect(readText('a.json', givenTerminal({ 'a.json': '{}\n' }))).toBe('{}\n');
});

test.each([
  ['ENOENT', 'there is no such file'],
  ['EISDIR', 'it is a folder'],
  ['EACCES', 'it may not be read'],
  ['EIO', 'input/output error'],
])('readText says in words what the system calls %s', (code, words) => {
  const terminal = givenTerminal();
  const broken = {
    ...terminal,
    read: () => {
      throw Object.assign(new Error('input/output error'), { code });
    },
  };
  expect(readText('a.json', broken)).toBeNull();
  expect(terminal.complaints()).toBe(`voussoir: a.json: ${words}\nreason: unreadable\n`);
  expect(terminal.output()).toBe('');
});
