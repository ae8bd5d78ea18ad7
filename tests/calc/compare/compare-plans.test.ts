import { expect, test } from 'vitest';
import type { Quantity } from '../../../src/calc/chapter';
import type { Change } from '../../../src/calc/compare/change';
import { comparePlans } from '../../../src/calc/compare/compare-plans';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';

const { evaluate } = createEvaluator();
const compared = (before: Plan, after: Plan) => comparePlans(evaluate(before), evaluate(after));
const only = (changes: readonly Change[], what: Change['what']) => changes.filter((change) => change.what === what);
const figure = (changes: readonly Change[], name: string) =>
  changes.filter((change) => change.what === 'figure' && change.name === name);

/** One straight wall A of eight columns and eight rows of panels of 500 x 500 mm, and no ceiling. */
const flat = samplePlan('flat');
const [wall] = flat.walls;
const eight = [1, 2, 3, 4, 5, 6, 7, 8];

test('comparePlans with another revision, note and currency finds nothing', () => {
  expect(compared(flat, { ...flat, revision: 'Z', note: 'Called the hall.', currency: 'JPY' })).toEqual([]);
});

test('comparePlans with a wall one row higher adds the panels of that row by their names', () => {
  const changes = compared(flat, { ...flat, walls: [{ ...wall!, bands: [{ ...wall!.bands[0]!, rows: 9 }] }] });
  expect(only(changes, 'panel').map(({ kind, name }) => [kind, name])).toEqual(
    eight.map((column) => ['added', `C${column} R9`]),
  );
  // 8 x 8 and 8 x 9 panels.
  const count = (value: number) => [{ value, unit: 'count' }];
  const panels = { kind: 'changed', before: count(64), after: count(72) };
  expect(figure(changes, 'Panels')).toMatchObject([panels]);
  expect(only(changes, 'item')).toContainEqual(expect.objectContaining(panels));
});

test('comparePlans with a wall put elsewhere moves its panels and nothing that is plugged into them', () => {
  const { place } = wall!;
  const changes = compared(flat, { ...flat, walls: [{ ...wall!, place: { ...place, xMm: place.xMm + 1000 } }] });
  const panels = only(changes, 'panel');
  expect(panels).toHaveLength(64);
  for (const { kind, before, after } of panels) {
    const x = (said: Change['before']) => (said![1] as Quantity).value;
    expect(kind).toBe('moved');
    expect(x(after) - x(before)).toBeCloseTo(1000, 6);
  }
  for (const what of ['port', 'circuit', 'processor', 'node', 'item'] as const) expect(only(changes, what)).toEqual([]);
});

test('comparePlans with a second wall renames the panels of the first, which get a letter, and leaves their ports', () => {
  const second = { ...wall!, id: 'second', letter: 'B', place: { ...wall!.place, yMm: wall!.place.yMm + 9000 } };
  const changes = compared(flat, { ...flat, walls: [wall!, second] });
  const renamed = only(changes, 'panel').filter(({ kind }) => kind === 'renamed');
  expect(renamed).toHaveLength(64);
  expect(renamed[0]).toMatchObject({ name: 'A C1 R1', before: ['C1 R1'], after: ['A C1 R1'] });
  expect(only(changes, 'panel').filter(({ kind }) => kind === 'added')).toHaveLength(64);
  expect(new Set(only(changes, 'port').map(({ kind }) => kind))).toEqual(new Set(['added']));
});

test('comparePlans with another wish shows the checks that it brings, and no more', () => {
  const hall = { ...flat.wish.hall, clearHeightMm: 3000 };
  const changes = compared(flat, { ...flat, wish: { ...flat.wish, hall } });
  expect(changes.map(({ kind, what, name }) => [kind, what, name])).toEqual([
    ['added', 'check', 'walls.clear-height.A'],
  ]);
});
