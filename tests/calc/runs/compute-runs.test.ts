import { expect, test } from 'vitest';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { plainProcessor, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { anchor, type PlainRuns, plainRuns } from './plain-runs';

const bands = [{ type: plainType(216), rows: 3 }];
const compute = (rest: PlainRuns) => {
  const given = plainRuns(rest);
  return computeRuns(given, wireStage(given));
};

test('computeRuns counts ports, breakouts and panels a port over the stage', () => {
  const surfaces = setOf(
    plainSurface({ letter: 'A', columns: 14, bands }),
    plainSurface({ letter: 'B', columns: 3, bands, isHole: (column, row) => column === 2 && row === 2 }),
  );
  const results = compute({ surfaces });
  // A: 14 columns on 14 ports of two breakouts; B: columns of 3, of 1 and 1 round the hole, and of 3, on one breakout.
  expect(results).toMatchObject({ portsUsed: 18, breakouts: 3, panelsPerPortMin: 1, panelsPerPortMax: 3, resting: [] });
  expect(results.fullestPortShare).toBeCloseTo((3 * 46_656) / 650_000, 12);
  expect(results.surfaces.map(({ ports }) => ports)).toEqual([14, 4]);
  expect(results.zones.map(({ processor, ports, breakouts, byHand }) => [processor, ports, breakouts, byHand])).toEqual(
    [
      [1, 14, 2, false],
      [2, 4, 1, false],
    ],
  );
  // Two by two, 14 columns would do on 7 ports; that is what the solver of the test says is least.
  expect(results.surfaces[0]?.portsLeast).toBe(7);
  expect(results.portsLeast).toBe(results.surfaces.reduce((sum, { portsLeast }) => sum + portsLeast, 0));
});

test('computeRuns without a zone has no run and no figure that is not one', () => {
  const results = compute({ signal: plainSignal({ processorId: null }) });
  expect(results).toMatchObject({
    runs: [],
    portsUsed: 0,
    portsLeast: 0,
    panelsPerPortMin: null,
    panelsPerPortMax: null,
    fullestPortShare: null,
    existing: null,
  });
  expect([...results.runOf]).toEqual(new Array(12).fill(-1));
});

test('computeRuns counts breakouts after hand changes, and none on direct ports', () => {
  const wall = plainSurface({ columns: 10, bands });
  const cut = { kind: 'cut' as const, id: 'c', from: anchor(1, 1), to: anchor(1, 2) };
  expect(compute({ wall }).breakouts).toBe(1);
  expect(compute({ wall, handChanges: [cut] })).toMatchObject({ breakouts: 2, portsUsed: 11 });
  const direct = plainProcessor({}, { outlets: { kind: 'direct', ports: 16 } });
  expect(compute({ wall, processors: [direct] }).breakouts).toBe(0);
  const one = plainProcessor({}, { outlets: { kind: 'breakouts', breakoutId: 'box', most: 1 } });
  expect(compute({ wall, processors: [one] }).breakouts).toBe(1);
});

test('computeRuns keeps a zone where it is when a hand change takes more ports than there are', () => {
  const few = plainProcessor({}, { outlets: { kind: 'direct', ports: 4 } });
  const cut = { kind: 'cut' as const, id: 'c', from: anchor(1, 1), to: anchor(1, 2) };
  const given = plainRuns({ processors: [few], handChanges: [cut] });
  const results = computeRuns(given, wireStage(given));
  expect(given.zones.zones.map(({ columns }) => columns)).toEqual([4]);
  expect(results.zones[0]).toMatchObject({ ports: 5, byHand: true });
});

test('computeRuns sets a wiring that exists beside its own', () => {
  const existingWiring = { source: 'as built', rows: [{ panel: 'C1 R1', port: 'x', place: 1 }] };
  expect(compute({ existingWiring }).existing).toMatchObject({ source: 'as built', ports: 1 });
});

test('computeRuns twice is equal, and equal to computing afresh', () => {
  expect(compute({})).toEqual(compute({}));
});
