import { expect, test } from 'vitest';
import type { Change } from '../../../src/calc/compare/change';
import { changesPart } from '../../../src/sheets/crew-set/changes-part';
import { cells } from '../cells';
import { options, tablesOf, textsOf } from './sample-set';

const since = (changes: readonly Change[]) => ({
  ...options,
  since: { name: 'B', issuedOn: '2026-11-20', currency: 'USD', changes, panels: new Uint8Array(0) },
});
const port: Change = { kind: 'moved', what: 'port', name: '1A-03', before: ['from A C1 R1'], after: ['from A C2 R1'] };
const price: Change = {
  kind: 'changed',
  what: 'figure',
  name: 'Price',
  before: [{ value: 5, unit: 'money' }],
  after: [{ value: 6, unit: 'money' }],
};
const panel = (column: number): Change => ({
  kind: 'added',
  what: 'panel',
  name: `C${column} R1`,
  before: null,
  after: [],
});

test('changesPart of a plan that was never issued is none', () => {
  expect(changesPart(options)).toBeNull();
});

test('changesPart lists what changed since a revision, the old money in its own currency', () => {
  const part = changesPart(since([port, price]))!;
  expect(part.title).toBe('What changed since revision B');
  expect(textsOf(part)).toEqual(['Revision B was issued on 2026-11-20.', '1 port moved.']);
  const { schedule } = tablesOf(part)[0]!;
  expect(cells(schedule, 0)).toMatchObject({ kind: 'moved', name: '1A-03', before: 'from A C1 R1' });
  expect(cells(schedule, 1)).toMatchObject({ before: 'US$5.00', after: '€6.00' });
});

test('changesPart says checks in words, without ids, and leaves the planner what is only an offer', () => {
  const check = (name: string, before: string | null, after: string | null): Change => {
    const said = (severity: string | null) => (severity === null ? null : [`${severity}: `, `About ${name}.`]);
    return { kind: 'changed', what: 'check', name, before: said(before), after: said(after) };
  };
  const checks = [
    check('power.legs', 'offer', 'stop'),
    check('runs.offer', null, 'offer'),
    check('wish', 'watch', null),
  ];
  const { schedule } = tablesOf(changesPart(since(checks))!)[0]!;
  expect(schedule.count).toBe(2);
  expect(cells(schedule, 0)).toMatchObject({
    name: '',
    before: 'offer: About power.legs.',
    after: 'stop: About power.legs.',
  });
  expect(cells(schedule, 1)).toMatchObject({ name: '', before: 'watch: About wish.' });
  expect(textsOf(changesPart(since([checks[1]!]))!)).toContain('Nothing that a crew reads has changed since.');
});

test('changesPart says so where nothing changed', () => {
  const part = changesPart(since([]))!;
  expect(tablesOf(part)).toEqual([]);
  expect(textsOf(part)).toContain('Nothing that a crew reads has changed since.');
});

test('changesPart counts what became of panels, ports and circuits, and lists panels last and 60 of them', () => {
  const panels = Array.from({ length: 90 }, (_, i) => panel(i + 1));
  const part = changesPart(since([...panels, port]))!;
  const { schedule } = tablesOf(part)[0]!;
  expect(schedule.count).toBe(61);
  expect(cells(schedule, 0)).toMatchObject({ name: '1A-03' });
  expect(textsOf(part)[1]).toBe('90 panels added, 1 port moved.');
  expect(textsOf(part).join()).toContain('And 30 panels more');
  expect(textsOf(changesPart(since([price]))!)[1]).toBe('No panel, port, cable or circuit changed.');
});
