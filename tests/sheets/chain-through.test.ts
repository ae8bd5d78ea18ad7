import { expect, it } from 'vitest';
import { chainThrough } from '../../src/sheets/chain-through';
import { dataChains } from '../../src/sheets/chains';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { polylines } from './polylines';

const parts = stageFixture({ columns: 2, rows: 2, jointDeg: 0, splitAboveRow: 2 });
const table = parts.surfaces.surfaces[0]!;
const grid = layOutUnrolled(table, 'inside', [{ firstColumn: 1, columns: 2 }], { aboveMm: 0, belowMm: 0 });

it('chainThrough gives the line of the run that a panel is on, entry first, whichever panel it is', () => {
  const line = [
    [310, 250],
    [310, 750],
    [810, 750],
    [810, 250],
  ];
  for (let panel = 0; panel < 4; panel++) {
    expect(polylines(chainThrough(grid, 0, dataChains(parts), panel)!)).toEqual([line]);
  }
});

it('chainThrough gives null for a panel on no run, of another surface, or that is not there', () => {
  const chains = dataChains(parts);
  expect(chainThrough(grid, 0, { ...chains, chainOf: new Int32Array(4).fill(-1) }, 0)).toBeNull();
  expect(
    chainThrough(grid, 0, { ...chains, list: chains.list.map((c) => ({ ...c, surfaceId: 'other' })) }, 0),
  ).toBeNull();
  expect(chainThrough(grid, 0, chains, 99)).toBeNull();
});
