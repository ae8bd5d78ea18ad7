import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { check } from '../../src/cli/check';
import type { CheckRecord } from '../../src/cli/check-record';
import { type GivenTerminal, givenTerminal } from './given-terminal';

const plain = { file: 'plan.json', options: new Set<string>() };
const asJson = { file: 'plan.json', options: new Set(['--json']) };
const sample = (name: string) => readFileSync(`fixtures/plans/${name}.json`, 'utf8');

// The fields that a reader of --json may count on, as they were agreed.
const fields = {
  headline: [
    ...['panels', 'columns', 'rows', 'insideDiameterMm', 'openingMm', 'wallHeightMm', 'pixels', 'processors'],
    ...['breakouts', 'portsUsed', 'portsLeast', 'panelsPerPortMin', 'panelsPerPortMax', 'fullestPortShare'],
    ...['circuits', 'worstLegA', 'neutralA', 'powerMaxW', 'heatTons', 'massKg', 'priceTotal'],
  ],
  checks: ['id', 'severity', 'measured', 'limit', 'unit', 'where', 'sentence'],
  zones: ['surface', 'processor', 'canvasWidth', 'canvasHeight', 'panels'],
  runs: ['surface', 'zone', 'port', 'pixels', 'share', 'panels'],
  circuits: ['distro', 'leg', 'panels', 'currentA'],
};

describe.each(['horseshoe', 'ring-feet', 'flat'])('check of the sample %s', (name) => {
  let terminal: GivenTerminal;
  let code: number;
  let record: CheckRecord;
  beforeAll(async () => {
    terminal = givenTerminal({ 'plan.json': sample(name) });
    code = await check.run(asJson, terminal);
    record = JSON.parse(terminal.output());
  });

  test('check --json has every field that was agreed', () => {
    expect(Object.keys(record)).toEqual(expect.arrayContaining([...Object.keys(fields), 'surfaces', 'legs']));
    expect(Object.keys(record.headline)).toEqual(expect.arrayContaining(fields.headline));
    for (const list of ['checks', 'zones', 'runs', 'circuits'] as const) {
      expect(record[list].length).toBeGreaterThan(0);
      for (const each of record[list]) expect(Object.keys(each)).toEqual(expect.arrayContaining(fields[list]));
    }
  });

  test('check --json gives every field its type, and null only where a figure may be missing', () => {
    const nullable = ['insideDiameterMm', 'openingMm', 'wallHeightMm', 'portsLeast', 'panelsPerPortMin', 'neutralA'];
    for (const name of fields.headline) {
      const value = record.headline[name as keyof CheckRecord['headline']];
      if (value === null) expect(nullable).toContain(name);
      else expect(value).toEqual(expect.any(Number));
    }
    const number = expect.any(Number);
    const text = expect.any(String);
    const names = expect.arrayContaining([text]);
    const figure = expect.toSatisfy((value: unknown) => value === null || typeof value === 'number');
    for (const each of record.checks) {
      expect(each).toMatchObject({ id: text, measured: figure, limit: figure, unit: text, sentence: text });
      expect(['pass', 'offer', 'watch', 'stop']).toContain(each.severity);
      for (const place of each.where) expect(place).toEqual({ kind: text, name: text });
    }
    for (const zone of record.zones) {
      const counts = { processor: number, canvasWidth: number, canvasHeight: number, panels: number };
      expect(zone).toMatchObject({ surface: text, ...counts });
    }
    for (const run of record.runs) {
      expect(run).toMatchObject({ surface: text, zone: number, port: text, pixels: number, share: number });
      expect(run.panels).toEqual(names);
    }
    for (const circuit of record.circuits) {
      expect(circuit).toMatchObject({ distro: number, leg: text, panels: names, currentA: number });
    }
    for (const leg of record.legs) expect(leg).toMatchObject({ leg: text, currentA: number, limitA: figure });
  });

  test('the sum of the parts is the whole: every panel is on one run and one circuit, and in one zone', () => {
    const { panels } = record.headline;
    const onRuns = record.runs.flatMap((run) => run.panels);
    const onCircuits = record.circuits.flatMap((circuit) => circuit.panels);
    expect(new Set(onRuns).size).toBe(panels);
    expect(onRuns).toHaveLength(panels);
    expect([...onCircuits].sort()).toEqual([...onRuns].sort());
    expect(record.zones.reduce((sum, zone) => sum + zone.panels, 0)).toBe(panels);
    expect(record.surfaces.reduce((sum, surface) => sum + surface.panels, 0)).toBe(panels);
    expect(record.runs).toHaveLength(record.headline.portsUsed);
    expect(record.circuits).toHaveLength(record.headline.circuits);
  });

  test('check ends with 1 exactly where a check stops the plan', () => {
    const stops = record.checks.filter((each) => each.severity === 'stop').length;
    expect(code).toBe(stops > 0 ? 1 : 0);
    expect(check.run(plain, givenTerminal({ 'plan.json': sample(name) }))).toBe(code);
  });

  test('check writes text of eighty columns, with every sentence filled in', () => {
    const text = givenTerminal({ 'plan.json': sample(name) });
    check.run(plain, text);
    for (const line of text.output().split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    expect(text.output()).not.toMatch(/\{\w+\}|NaN|Infinity|undefined/);
    expect(terminal.complaints() + text.complaints()).toBe('');
  });
});

test('check of a plan without a processor ends with 1', () => {
  const plan = JSON.parse(sample('flat'));
  plan.signal.processorId = null;
  plan.signal.bySurface = [];
  expect(check.run(plain, givenTerminal({ 'plan.json': JSON.stringify(plan) }))).toBe(1);
});

test('check of what is no plan ends with 2 and prints nothing', () => {
  const terminal = givenTerminal({ 'plan.json': '[]' });
  expect(check.run(asJson, terminal)).toBe(2);
  expect(terminal.output()).toBe('');
  expect(terminal.complaints()).toContain('reason: not-a-plan');
});
