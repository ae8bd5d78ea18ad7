import { expect, test } from 'vitest';
import { filterThings, stepCell, thingFilters } from '../../../../src/ui/chapters/log/thing-rows';
import { logWith } from './wall-in-hand';

const tick = { step: 'wired', of: 'port', name: '1A-02', done: true, who: 'Ada', atMs: 5 } as const;
const back = { ...tick, name: '1A-03', done: false };
const { port } = logWith([tick, back]);
const moment = (atMs: number) => `at ${atMs}`;

test('filterThings tells what is open from what is done; what was taken back is open', () => {
  const names = (filter: (typeof thingFilters)[number]['value']) => filterThings(port, filter).map(({ name }) => name);
  expect(names('done wired')).toEqual(['1A-02']);
  expect(names('open wired')).toEqual(port.map(({ name }) => name).filter((name) => name !== '1A-02'));
  expect(names('done tested')).toEqual([]);
  expect(filterThings(port, 'all')).toBe(port);
});

test('thingFilters offer every step both ways, each in words of its own', () => {
  expect(thingFilters).toHaveLength(9);
  expect(new Set(thingFilters.map(({ label }) => label)).size).toBe(9);
});

test('stepCell says who and when, and of a tick taken back that it was', () => {
  const cell = (name: string) => stepCell(port.find((one) => one.name === name)!, 'wired', moment);
  expect(cell('1A-02')).toBe('✓ Ada, at 5');
  expect(cell('1A-03')).toBe('taken back Ada, at 5');
  expect(cell('1A-01')).toBe('');
});
