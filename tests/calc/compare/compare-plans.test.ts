import { expect, test } from 'vitest';
import type { Quantity } from '../../../src/calc/chapter';
import type { Change } from '../../../src/calc/compare/change';
import { type ComparedPlan, comparePlans } from '../../../src/calc/compare/compare-plans';
import { createEvaluator } from '../../../src/calc/evaluate';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';
import { smallStage } from '../../cli/small-stage';

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

test('comparePlans with a panel left out says so of what hangs on it, and nothing of the other columns', () => {
  const hole = { id: 'gap', name: 'Gap', segmentId: 'straight', column: 1, row: 1, columns: 1, rows: 1 };
  const changes = compared(flat, { ...flat, walls: [{ ...wall!, holes: [hole] }] });
  expect(only(changes, 'panel')).toMatchObject([{ kind: 'removed', name: 'C1 R1' }]);
  // Every panel behind the gap has another number now; a run or circuit of the same panels is the same all the same.
  const circuits = only(changes, 'circuit').filter(({ kind }) => kind !== 'changed');
  expect(circuits).toMatchObject([{ kind: 'moved', name: 'D1-1' }]);
  for (const { before, after } of only(changes, 'port')) expect(before).not.toEqual(after);
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

/** The stage of two panels with each of them on a run and a node of its own, by the names given. */
function wiredAs(ports: readonly [string, string], nodes: readonly [string, string]): ComparedPlan {
  const { runs, zones } = smallStage;
  const run = runs.results.runs[0]!;
  const zone = zones.results.zones[0]!;
  const rest = { checks: [], working: [] };
  const both = [0, 1] as const;
  return {
    ...smallStage,
    runs: {
      ...rest,
      results: { ...runs.results, runs: both.map((i) => ({ ...run, port: ports[i], start: i, count: 1, zone: i })) },
    },
    zones: {
      ...rest,
      results: {
        ...zones.results,
        zones: both.map((i) => ({ ...zone, processor: i + 1, firstColumn: i + 1, columns: 1 })),
      },
    },
    nodes: {
      ...rest,
      results: {
        nodes: both.map((i) => ({
          name: nodes[i],
          itemId: null,
          surfaceId: 'w',
          letter: 'A',
          mode: { rate: { frames: 60, seconds: 1 }, depthBits: 8, pictures: 1 },
          canvasWidth: 100,
          canvasHeight: 100,
          offsetX: 0,
          offsetY: 0,
          crops: [{ zone: i, processor: i + 1, x: 0, y: 0, width: 100, height: 100 }],
          outputs: 1,
          litPixels: 10_000,
          blankPixels: 0,
        })),
        nodeOfZone: [0, 1],
        spareNodes: 0,
        surfaces: [],
        delays: [],
        sync: [],
        addresses: [],
      },
    },
    materials: { ...rest, results: { lines: [], massKg: 0, priceTotal: 0, priceToGet: 0, unpriced: 0 } },
  };
}

test('comparePlans follows a run, its trunk and a node to another name by the panels behind them', () => {
  // The names of the new plan sort the other way round, so that pairing by turn alone would cross them.
  const changes = comparePlans(wiredAs(['1A-01', '1B-01'], ['N1', 'N2']), wiredAs(['1D-01', '1C-01'], ['N4', 'N3']));
  expect(changes.map(({ kind, what, before, name }) => [kind, what, before?.[0], name])).toEqual([
    ['renamed', 'port', '1A-01', '1D-01'],
    ['renamed', 'port', '1B-01', '1C-01'],
    ['renamed', 'trunk', '1A', '1D'],
    ['renamed', 'trunk', '1B', '1C'],
    ['renamed', 'node', 'N1', 'N4'],
    ['renamed', 'node', 'N2', 'N3'],
  ]);
});

test('comparePlans tells a run that changed its panels by its port', () => {
  const before = wiredAs(['1-01', '1-02'], ['N1', 'N2']);
  expect(comparePlans(before, wiredAs(['1-02', '1-01'], ['N1', 'N2']))).toEqual([
    { kind: 'moved', what: 'port', name: '1-02', before: ['1 panel: C1 R1'], after: ['1 panel: C2 R1'] },
    { kind: 'moved', what: 'port', name: '1-01', before: ['1 panel: C2 R1'], after: ['1 panel: C1 R1'] },
  ]);
});
