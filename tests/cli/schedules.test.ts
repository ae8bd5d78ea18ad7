import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import readWorkbook from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { check } from '../../src/cli/check';
import { schedules } from '../../src/cli/schedules';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const given = { file: 'plan.json', options: new Set<string>(), out: 'out' };

test('schedules writes a spreadsheet that another reader takes, and a CSV file for each of its sheets', async () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(await schedules.run(given, terminal)).toBe(0);
  const [first, ...others] = terminal.written.keys();
  expect(first).toBe('out/schedules.xlsx');
  const sheets = await readWorkbook(Buffer.from(terminal.written.get(first!)!));
  expect(others).toHaveLength(sheets.length);
  expect(terminal.output().trimEnd().split('\n')).toHaveLength(sheets.length + 1);
  const circuits = csvParse(new TextDecoder().decode(terminal.written.get('out/circuits.csv')));
  const checked = givenTerminal({ 'plan.json': flat });
  await check.run({ file: 'plan.json', options: new Set(['--json']) }, checked);
  // A row for each circuit, and the totals.
  expect(circuits).toHaveLength(JSON.parse(checked.output()).headline.circuits + 1);
});

test('schedules ends with 2 where nothing can be read or written', async () => {
  expect(await schedules.run(given, givenTerminal())).toBe(2);
  const locked = givenTerminal({ 'plan.json': flat });
  expect(await schedules.run({ ...given, out: 'locked' }, locked)).toBe(2);
  expect(locked.complaints()).toContain('locked/schedules.xlsx: it may not be written');
});
