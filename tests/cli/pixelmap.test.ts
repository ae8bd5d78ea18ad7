import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { expect, test } from 'vitest';
import { check } from '../../src/cli/check';
import { pixelmap } from '../../src/cli/pixelmap';
import { givenTerminal } from './given-terminal';

const flat = readFileSync('fixtures/plans/flat.json', 'utf8');
const asCsv = { file: 'plan.json', options: new Set(['--csv']) };

test('pixelmap --csv has the agreed heading and a line for each panel that check counts', () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(pixelmap.run(asCsv, terminal)).toBe(0);
  expect(terminal.output().split('\r\n')[0]).toBe(
    'panel,surface,column,row,canvasX,canvasY,width,height,turn,node,processor,breakout,port,place',
  );
  const checked = givenTerminal({ 'plan.json': flat });
  check.run({ file: 'plan.json', options: new Set(['--json']) }, checked);
  expect(csvParse(terminal.output())).toHaveLength(JSON.parse(checked.output()).headline.panels);
});

test('pixelmap without --csv is text of eighty columns', () => {
  const terminal = givenTerminal({ 'plan.json': flat });
  expect(pixelmap.run({ file: 'plan.json', options: new Set() }, terminal)).toBe(0);
  for (const line of terminal.output().split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect(terminal.output()).toContain('Panels without a node: 0');
});

test('pixelmap ends with 2 on what is no plan, with reason on standard error', () => {
  const terminal = givenTerminal({ 'plan.json': '{' });
  expect(pixelmap.run(asCsv, terminal)).toBe(2);
  expect(terminal.output()).toBe('');
  expect(terminal.complaints()).toContain('reason: ');
});
