import { expect, it } from 'vitest';
import { schedulePanels } from '../../src/sheets/schedule-panels';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { cells } from './cells';

const parts = stageFixture({ columns: 2, rows: 2, jointDeg: 0, splitAboveRow: 2, ceilingDiameterMm: 1000 });
const schedule = schedulePanels(parts);

it('schedulePanels gives every panel with its way', () => {
  expect(schedule.count).toBe(8);
  expect(cells(schedule, 2)).toEqual({
    panel: 'A C2 R1',
    type: 'Panel 500',
    processor: 1,
    port: '1A-01',
    place: 3,
    circuit: 'D1-2',
    leg: 'L2',
    canvasX: 216,
    canvasY: 216,
  });
  expect(cells(schedule, 4)).toMatchObject({ panel: 'B C1 R1', processor: 2, port: '2A-01', canvasY: 104 });
  expect(schedule.panelOf(4)).toBe(4);
});

it('schedulePanels leaves the way open where a panel is on no run and no circuit', () => {
  const bare = schedulePanels({
    ...parts,
    runs: { ...parts.runs, runOf: new Int32Array(8).fill(-1) },
    power: { ...parts.power, circuitOf: new Int32Array(8).fill(-1) },
  });
  expect(cells(bare, 0)).toMatchObject({ processor: null, port: null, place: null, circuit: null, leg: null });
});

it('schedulePanels costs nothing until a row is asked for', () => {
  const many = stageFixture({ columns: 1000, rows: 20, jointDeg: 0.34 });
  let asked = 0;
  const { surfaces } = many;
  const counted = {
    ...surfaces,
    surfaces: surfaces.surfaces.map((table) => ({
      ...table,
      get column() {
        asked++;
        return table.column;
      },
    })),
  };
  const lazy = schedulePanels({ ...many, surfaces: counted });
  expect([lazy.count, asked]).toEqual([20_000, 0]);
  lazy.row(19_999);
  expect(asked).toBeLessThan(10);
});
