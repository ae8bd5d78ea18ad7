import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { expect, test } from 'vitest';
import { check } from '../../src/cli/check';
import { materials } from '../../src/cli/materials';
import { givenTerminal } from './given-terminal';

const asCsv = { file: 'plan.json', options: new Set(['--csv']) };
const plain = { file: 'plan.json', options: new Set<string>() };
const sample = (name: string) => readFileSync(`fixtures/plans/${name}.json`, 'utf8');

test.each(['horseshoe', 'ring-feet', 'flat'])('materials --csv of %s counts the panels that check counts', (name) => {
  const bill = givenTerminal({ 'plan.json': sample(name) });
  expect(materials.run(asCsv, bill)).toBe(0);
  const lines = csvParse(bill.output().replace(/^\ufeff/, ''));
  const panels = lines.filter((line) => line.Group === 'panels').reduce((sum, line) => sum + Number(line.Needed), 0);
  const checked = givenTerminal({ 'plan.json': sample(name) });
  check.run({ file: 'plan.json', options: new Set(['--json']) }, checked);
  expect(panels).toBe(JSON.parse(checked.output()).headline.panels);
});

test('materials --csv heads its figures with kg and the currency of the plan', () => {
  const terminal = givenTerminal({ 'plan.json': sample('ring-feet') });
  materials.run(asCsv, terminal);
  expect(terminal.output().split('\r\n')[0]).toContain('Mass each (kg),Mass (kg),Price each (USD),Price to get (USD)');
});

test('materials without --csv is text of eighty columns', () => {
  const terminal = givenTerminal({ 'plan.json': sample('horseshoe') });
  expect(materials.run(plain, terminal)).toBe(0);
  for (const line of terminal.output().split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect(terminal.output()).not.toMatch(/NaN|Infinity|undefined/);
});

test('materials of a plan that a check stops says so beside the bill, and gives the bill', () => {
  const plan = JSON.parse(sample('flat'));
  plan.signal.processorId = null;
  plan.signal.bySurface = [];
  const terminal = givenTerminal({ 'plan.json': JSON.stringify(plan) });
  expect(materials.run(asCsv, terminal)).toBe(0);
  expect(terminal.complaints()).toMatch(/checks that stop this plan: [1-9]/);
  expect(terminal.output()).toContain('Needed');
});

test('materials of what is no plan ends with 2 and prints nothing', () => {
  const terminal = givenTerminal({ 'plan.json': '{' });
  expect(materials.run(asCsv, terminal)).toBe(2);
  expect(terminal.output()).toBe('');
});
