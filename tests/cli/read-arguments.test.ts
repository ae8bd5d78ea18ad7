import { expect, test } from 'vitest';
import { type Command, exitCodes } from '../../src/cli/command';
import { readArguments } from '../../src/cli/read-arguments';

const command: Command = {
  name: 'weigh',
  usage: 'weigh PLAN.json [--json]',
  options: { '--json': 'as one object' },
  files: 1,
  summary: 'weighs a plan',
  run: () => exitCodes.ok,
};

test('readArguments takes the options before and after the file', () => {
  expect(readArguments(command, ['--json', 'a.json'])).toEqual({ file: 'a.json', options: new Set(['--json']) });
  expect(readArguments(command, ['a.json', '--json'])).toEqual({ file: 'a.json', options: new Set(['--json']) });
});

test('readArguments takes - as the file that is standard input', () => {
  expect(readArguments(command, ['-'])).toEqual({ file: '-', options: new Set() });
});

test.each([
  [['a.json', '--yaml'], 'weigh knows no option --yaml'],
  [[], 'weigh wants a file'],
  [['a.json', 'b.json'], 'weigh wants one file only: b.json'],
])('readArguments refuses %j and says why', (words, refused) => {
  expect(readArguments(command, words)).toEqual({ refused });
});

test('readArguments refuses a file where none is wanted', () => {
  expect(readArguments({ ...command, files: 0 }, ['a.json'])).toEqual({ refused: 'weigh wants no file: a.json' });
});

test('readArguments takes two files in their order, of a command that wants two', () => {
  const two: Command = { ...command, files: 2 };
  const expected = { file: 'a.json', secondFile: 'b.json', options: new Set(['--json']) };
  expect(readArguments(two, ['a.json', '--json', 'b.json'])).toEqual(expected);
  expect(readArguments(two, ['a.json'])).toEqual({ refused: 'weigh wants two files' });
  expect(readArguments(two, ['a', 'b', 'c'])).toEqual({ refused: 'weigh wants two files only: c' });
});

const writing: Command = { ...command, options: { '--out DIR': 'folder', '--json': 'as one object' } };

test('readArguments takes the folder that stands after --out, before the file or behind it', () => {
  const expected = { file: 'a.json', options: new Set(['--json']), out: 'made' };
  expect(readArguments(writing, ['a.json', '--out', 'made', '--json'])).toEqual(expected);
  expect(readArguments(writing, ['--json', '--out', 'made', 'a.json'])).toEqual(expected);
});

test.each([
  [['a.json'], 'weigh wants a folder after --out'],
  [['a.json', '--out'], 'weigh wants a folder after --out'],
])('readArguments refuses %j of a command that writes into a folder', (words, refused) => {
  expect(readArguments(writing, words)).toEqual({ refused });
});

test('readArguments knows no --out of a command that writes nothing', () => {
  expect(readArguments(command, ['a.json', '--out', 'made'])).toEqual({ refused: 'weigh knows no option --out' });
});

const lacking: Command = {
  ...command,
  options: { '[--out DIR]': 'folder', '[--paper a4|a3]': 'size', '[--address URL]': 'of the page', '--csv': 'as CSV' },
};

test('readArguments takes texts after other options', () => {
  const texts: Command = { ...command, options: { '[--parts NAMES]': 'parts', '[--date YYYY-MM-DD]': 'day' } };
  const given = readArguments(texts, ['--parts', 'cover,zones', 'a.json', '--date', '2026-11-25']);
  expect(given).toEqual({ file: 'a.json', options: new Set(), parts: 'cover,zones', date: '2026-11-25' });
  expect(readArguments(texts, ['a.json', '--parts'])).toEqual({ refused: 'weigh wants NAMES after --parts' });
});

test('readArguments takes options in brackets or does without them', () => {
  expect(readArguments(lacking, ['a.json'])).toEqual({ file: 'a.json', options: new Set() });
  const words = ['--paper', 'a3', 'a.json', '--csv', '--address', 'https://plan.example/', '--out', 'made'];
  expect(readArguments(lacking, words)).toEqual({
    file: 'a.json',
    options: new Set(['--csv']),
    out: 'made',
    paper: 'a3',
    address: 'https://plan.example/',
  });
});

test.each([
  [['a.json', '--paper'], 'weigh wants a4 or a3 after --paper'],
  [['a.json', '--paper', 'b5'], 'weigh wants a4 or a3 after --paper'],
  [['a.json', '--out'], 'weigh wants a folder after --out'],
  [['a.json', '--address', 'plan.example'], 'weigh wants an address with https:// or http:// after --address'],
])('readArguments refuses %j of options in brackets', (words, refused) => {
  expect(readArguments(lacking, words)).toEqual({ refused });
});

const choosing: Command = { ...command, options: { '--format dxf|svg': 'form', '--out DIR': 'folder' } };

test('readArguments takes the word that stands after --format', () => {
  const given = readArguments(choosing, ['--format', 'dxf', 'a.json', '--out', 'made']);
  expect(given).toEqual({ file: 'a.json', options: new Set(), out: 'made', format: 'dxf' });
});

test.each([
  [['a.json', '--out', 'made'], 'weigh wants dxf or svg after --format'],
  [['a.json', '--out', 'made', '--format', 'pdf'], 'weigh wants dxf or svg after --format'],
  [['a.json', '--format', 'svg'], 'weigh wants a folder after --out'],
])('readArguments refuses %j of a command that wants one of two words', (words, refused) => {
  expect(readArguments(choosing, words)).toEqual({ refused });
});
