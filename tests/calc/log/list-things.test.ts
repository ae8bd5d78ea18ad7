import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { listThings } from '../../../src/calc/log/list-things';
import { stageFixture } from '../../arbitraries/evaluation-fixture';
import { wiredPlan } from '../../arbitraries/wired-plan';
import { smallStage, twoSurfaces } from './small-stage';

const names = (things: readonly { readonly name: string }[]) => things.map(({ name }) => name);

test('listThings names columns, ports and circuits as they stand on paper, with their panels in order', () => {
  const { column, port, circuit } = listThings(smallStage);
  expect(names(column)).toEqual(['C1', 'C2', 'C3', 'C4']);
  expect(names(port)).toEqual(['1A-01', '1A-02', '1A-03', '2A-01', '2A-02', '2A-03']);
  expect(names(circuit)).toEqual(['D1-1', 'D1-2', 'D1-3', 'D1-4']);
  expect(column[1]?.panels).toEqual([3, 4, 5]);
  expect(port[1]?.panels).toEqual([4, 5]);
  expect(port[2]?.panels).toEqual([0, 3]);
  expect(circuit[3]?.panels).toEqual([9, 10, 11]);
  expect(port.map(({ zones }) => zones)).toEqual([[0], [0], [0], [1], [1], [1]]);
});

test('listThings counts a thing in every zone that drives a panel of it', () => {
  const oneCircuit = { name: 'D1-1', surfaceId: 'wall-a', start: 0, count: 12 };
  const things = listThings({ ...smallStage, power: { ...smallStage.power, circuits: [oneCircuit] } });
  expect(things.circuit[0]?.zones).toEqual([0, 1]);
});

test('listThings leaves out a column without panels, and gives letters where there are two surfaces', () => {
  const holed = stageFixture({
    columns: 4,
    rows: 3,
    jointDeg: 5,
    hole: { column: 2, row: 1, columns: 1, rows: 3 },
  });
  expect(names(listThings(holed).column)).toEqual(['C1', 'C3', 'C4']);
  expect(names(listThings(twoSurfaces).column).slice(0, 5)).toEqual(['A C1', 'A C2', 'A C3', 'A C4', 'B C1']);
});

test('listThings has a port that a run comes back to as a thing of its own that feeds nothing, in the order of ports', () => {
  const { runs } = smallStage;
  const returned = runs.runs.map((run, index) => ({ ...run, returnPort: index < 2 ? `1B-0${index + 1}` : null }));
  const { port } = listThings({ ...smallStage, runs: { ...runs, runs: returned } });
  expect(names(port).slice(0, 6)).toEqual(['1A-01', '1A-02', '1A-03', '1B-01', '1B-02', '2A-01']);
  expect(port[4]).toMatchObject({ name: '1B-02', feeds: false, panels: [4, 5] });
  expect(port[1]).toMatchObject({ name: '1A-02', feeds: true });
});

test('listThings orders ports by number and not by letters', () => {
  const { runs } = smallStage;
  const ports = ['10A-01', '2A-10', '2A-02', '3-04', '10-02', '2B-01'];
  const renamed = runs.runs.map((run, index) => ({ ...run, port: ports[index]! }));
  const { port } = listThings({ ...smallStage, runs: { ...runs, runs: renamed } });
  expect(names(port)).toEqual(['2A-02', '2A-10', '2B-01', '3-04', '10-02', '10A-01']);
});

test('listThings puts every panel of any plan into just one column, and into no more than one port that feeds it and one circuit', () => {
  const { evaluate } = createEvaluator();
  fc.assert(
    fc.property(wiredPlan, (plan) => {
      const { surfaces, zones, runs, power } = evaluate(plan);
      const things = listThings({ surfaces, zones: zones.results.zones, runs: runs.results, power: power.results });
      const all = Array.from({ length: surfaces.total }, (_, panel) => panel);
      expect(things.column.flatMap(({ panels }) => panels)).toEqual(all);
      for (const kind of ['port', 'circuit'] as const) {
        const panels = things[kind].filter(({ feeds }) => feeds).flatMap((thing) => thing.panels);
        expect(new Set(panels).size).toBe(panels.length);
        expect(new Set(names(things[kind])).size).toBe(things[kind].length);
      }
    }),
    { numRuns: 25 },
  );
});
