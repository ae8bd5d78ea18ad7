import { expect, test } from 'vitest';
import type { Change } from '../../src/calc/compare/change';
import { scheduleChanges } from '../../src/sheets/schedule-changes';
import type { Unit } from '../../src/units/unit';
import { cells } from './cells';

const format = (mark: string) => (value: number, unit: Unit, extra: number) => `${value.toFixed(extra)} ${unit}${mark}`;
const formats = { before: format(' old'), after: format(' new') };
const mass = (before: number | null, after: number | null): Change => {
  const say = (value: number | null) => (value === null ? null : [{ value, unit: 'kg' } as const]);
  return { kind: 'changed', what: 'figure', name: 'Mass', before: say(before), after: say(after) };
};

test('scheduleChanges has a row for each change: kind, what, name, before and after', () => {
  const moved: Change = {
    kind: 'moved',
    what: 'panel',
    name: 'C1 R1',
    before: ['x ', { value: 5, unit: 'mm' }],
    after: ['x ', { value: 7, unit: 'mm' }, ' up'],
  };
  const added: Change = { kind: 'added', what: 'port', name: '1A-01', before: null, after: ['2 panels'] };
  const schedule = scheduleChanges([moved, added], formats);
  expect(schedule.count).toBe(2);
  expect(cells(schedule, 0)).toEqual({
    kind: 'moved',
    what: 'Panel',
    name: 'C1 R1',
    before: 'x 5 mm old',
    after: 'x 7 mm new up',
  });
  expect(cells(schedule, 1)).toEqual({ kind: 'added', what: 'Port', name: '1A-01', before: null, after: '2 panels' });
  expect(schedule.panelOf(0)).toBeNull();
});

test('scheduleChanges says where a figure was not known and where there was no detail', () => {
  expect(cells(scheduleChanges([mass(null, 3)], formats), 0)).toMatchObject({ before: 'not known', after: '3 kg new' });
  const returns: Change = { kind: 'changed', what: 'port', name: '1-01', before: ['returns to 1-02'], after: null };
  expect(cells(scheduleChanges([returns], formats), 0)).toMatchObject({ before: 'returns to 1-02', after: 'none' });
});

test('scheduleChanges gives figures that differ more digits until they no longer read alike', () => {
  const same = { before: format(''), after: format('') };
  expect(cells(scheduleChanges([mass(17.312, 17.318)], same), 0)).toMatchObject({
    before: '17.31 kg',
    after: '17.32 kg',
  });
});
