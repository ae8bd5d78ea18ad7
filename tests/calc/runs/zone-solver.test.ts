import { expect, test } from 'vitest';
import { zoneGrid } from '../../../src/calc/runs/zone-grid';
import { createZoneSolver, type WiringTerms } from '../../../src/calc/runs/zone-solver';
import { plainSurface, plainType } from '../zones/plain-surface';
import { columnSolver } from './column-wiring';

const limits = { usablePixels: 100_000, panelsMost: 10, counting: 'panels' as const, reachMm: 2100 };
const terms: WiringTerms = { priority: 'repeats', portsThere: 20, portsABreakout: 10 };
const wall = plainSurface({ columns: 9, bands: [{ type: plainType(100), rows: 3 }] });
const grid = (firstColumn: number, columns: number) =>
  zoneGrid(wall, { firstColumn, columns, firstRow: 1, rows: 3 }, 'bottom').grid;
const key = ({ columns, rows }: { columns: number; rows: number }, { usablePixels }: { usablePixels: number }) =>
  `${columns} ${rows} ${usablePixels}`;

test('createZoneSolver wires each distinct shape once', () => {
  const { solve, calls } = columnSolver();
  const remembering = createZoneSolver(solve, key);
  const first = remembering(grid(1, 3), limits, terms);
  expect(remembering(grid(4, 3), limits, terms)).toBe(first);
  expect(remembering(grid(7, 2), limits, terms)).not.toBe(first);
  expect(calls()).toBe(2);
});

test('createZoneSolver asks again where limits or terms differ', () => {
  const { solve, calls } = columnSolver();
  const remembering = createZoneSolver(solve, key);
  remembering(grid(1, 3), limits, terms);
  remembering(grid(1, 3), { ...limits, usablePixels: 50_000 }, terms);
  remembering(grid(1, 3), limits, { ...terms, priority: 'fewest-ports' });
  remembering(grid(1, 3), limits, { ...terms, portsThere: 4 });
  remembering(grid(1, 3), limits, { ...terms, portsABreakout: 4 });
  expect(calls()).toBe(5);
});

test('createZoneSolver forgets what was asked longest ago, not what is asked again', () => {
  const { solve, calls } = columnSolver();
  const remembering = createZoneSolver(solve, key);
  const ask = (usablePixels: number) => remembering(grid(1, 1), { ...limits, usablePixels }, terms);
  for (let i = 0; i < 4096; i++) ask(100_000 + i);
  ask(100_000);
  ask(200_000);
  expect(calls()).toBe(4097);
  ask(100_000);
  expect(calls()).toBe(4097);
  ask(100_001);
  expect(calls()).toBe(4098);
});
