import { expect, test } from 'vitest';
import { writeFile } from '../../src/cli/write-file';
import { givenTerminal } from './given-terminal';

const file = { name: 'pictures/N1.png', bytes: new Uint8Array(1500) };

test('writeFile writes into the folder and says what and how large', () => {
  const terminal = givenTerminal();
  expect(writeFile('out/', file, terminal)).toBe(true);
  expect([...terminal.written.keys()]).toEqual(['out/pictures/N1.png']);
  expect(terminal.output()).toBe('out/pictures/N1.png  2 kB\n');
});

test('writeFile says on standard error why a file cannot be written', () => {
  const terminal = givenTerminal();
  expect(writeFile('locked', file, terminal)).toBe(false);
  expect(terminal.output()).toBe('');
  expect(terminal.complaints()).toBe('voussoir: locked/pictures/N1.png: it may not be written\nreason: unwritable\n');
});
