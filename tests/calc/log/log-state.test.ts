import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isDone, type ThingState } from '../../../src/calc/log/log-state';
import { mergeTicks } from '../../../src/plan/merge-ticks';
import { ticks } from '../../arbitraries/tick';
import { smallStage, stateWith, ticked, twoSurfaces } from './small-stage';

const find = (things: readonly ThingState[], name: string) => things.find((thing) => thing.name === name)!;

test('stateOfLog says of every thing which steps are done, by whom and when, and of the others nothing', () => {
  const state = stateWith([ticked('column', 'C2', 'stands', { who: 'Bo', atMs: 7 }), ticked('port', '1A-02', 'wired')]);
  expect(find(state.column, 'C2').steps).toEqual({ stands: { done: true, who: 'Bo', atMs: 7 } });
  expect(find(state.column, 'C1').steps).toEqual({});
  expect(find(state.port, '1A-02').steps).toEqual({ wired: { done: true, who: 'Ada', atMs: 1000 } });
  expect(state.resting).toEqual([]);
});

test('stateOfLog lets the newest tick decide, whatever the order of the list', () => {
  const log = [
    ticked('circuit', 'D1-1', 'powered', { atMs: 3, done: false }),
    ticked('circuit', 'D1-1', 'powered', { atMs: 2 }),
    ticked('circuit', 'D1-2', 'powered', { atMs: 4 }),
    ticked('circuit', 'D1-2', 'powered', { atMs: 3, done: false }),
  ];
  const state = stateWith(log);
  expect(isDone(find(state.circuit, 'D1-1'), 'powered')).toBe(false);
  expect(find(state.circuit, 'D1-1').steps.powered).toEqual({ done: false, who: 'Ada', atMs: 3 });
  expect(isDone(find(state.circuit, 'D1-2'), 'powered')).toBe(true);
  expect(isDone(find(state.circuit, 'D1-2'), 'wired')).toBe(false);
});

test('stateOfLog lets a taking back win over a tick of the same person and moment', () => {
  const state = stateWith([ticked('port', '1A-01', 'tested', { done: false }), ticked('port', '1A-01', 'tested')]);
  expect(isDone(find(state.port, '1A-01'), 'tested')).toBe(false);
});

test('stateOfLog lists as resting what the plan does not have now, and finds it again when it is back', () => {
  const log = [ticked('column', 'B C1', 'stands'), ticked('port', '9A-01', 'wired', { done: false })];
  const alone = stateWith(log, smallStage);
  expect(alone.resting).toEqual([
    { of: 'column', name: 'B C1', steps: { stands: { done: true, who: 'Ada', atMs: 1000 } } },
    { of: 'port', name: '9A-01', steps: { wired: { done: false, who: 'Ada', atMs: 1000 } } },
  ]);
  const both = stateWith(log, twoSurfaces);
  expect(both.resting.map(({ name }) => name)).toEqual(['9A-01']);
  expect(isDone(find(both.column, 'B C1'), 'stands')).toBe(true);
});

test('stateOfLog keeps the ticks of a column when a second surface gives it a letter', () => {
  const log = [ticked('column', 'C2', 'stands'), ticked('column', 'A C2', 'stands', { atMs: 2000, done: false })];
  expect(stateWith(log.slice(0, 1), twoSurfaces).column.filter((thing) => isDone(thing, 'stands'))).toMatchObject([
    { name: 'A C2' },
  ]);
  expect(isDone(find(stateWith(log, twoSurfaces).column, 'A C2'), 'stands')).toBe(false);
  expect(isDone(find(stateWith(log, smallStage).column, 'C2'), 'stands')).toBe(false);
});

test('stateOfLog loses nothing that was ticked: it is a thing of the plan or it rests', () => {
  fc.assert(
    fc.property(ticks, (log) => {
      const state = stateWith([...log], twoSurfaces);
      const things = [...state.column, ...state.port, ...state.circuit, ...state.resting];
      const steps = things.reduce((sum, thing) => sum + Object.keys(thing.steps).length, 0);
      // C3 of the arbitrary is A C3 here, and no other two of its names mean the same.
      expect(steps).toBe(new Set(log.map(({ of, name, step }) => `${of} ${name} ${step}`)).size);
    }),
  );
});

test('stateOfLog says the same of two phones merged in either order', () => {
  fc.assert(
    fc.property(ticks, ticks, (one, other) => {
      const merged = stateWith([...mergeTicks(one, other)], twoSurfaces);
      expect(stateWith([...mergeTicks(other, one)], twoSurfaces)).toEqual(merged);
      expect(stateWith([...one, ...other], twoSurfaces)).toEqual(merged);
    }),
  );
});
