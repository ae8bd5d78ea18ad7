import { expect, test } from 'vitest';
import type { RunLimits, WiringGrid } from '../../../src/calc/runs/wiring-grid';
import { zoneGrid } from '../../../src/calc/runs/zone-grid';
import { zoneKey } from '../../../src/calc/runs/zone-key';
import { plainSurface, plainType } from '../zones/plain-surface';

const limits: RunLimits = { usablePixels: 585_000, panelsMost: 20, counting: 'panels', reachMm: 2100 };
const wall = plainSurface({
  columns: 8,
  bands: [{ type: plainType(216), rows: 3 }],
  isHole: (c, r) => c === 7 && r === 2,
});
const grid = (firstColumn: number, columns = 3) =>
  zoneGrid(wall, { firstColumn, columns, firstRow: 1, rows: 3 }, 'bottom').grid;

test('zoneKey is equal for zones of equal shape wherever they stand', () => {
  expect(zoneKey(grid(1), limits)).toBe(zoneKey(grid(4), limits));
});

test('zoneKey tells every difference that a wiring can hang on', () => {
  const plain = grid(1);
  const changed = (change: Partial<WiringGrid>) => zoneKey({ ...plain, ...change }, limits);
  const bumped = (list: Uint32Array) => list.map((value, place) => (place === 4 ? value + 1 : value));
  const keys = [
    zoneKey(plain, limits),
    zoneKey(grid(6), limits),
    zoneKey(grid(1, 2), limits),
    changed({ columns: 9, rows: 1 }),
    changed({ pixelLeft: bumped(plain.pixelLeft) }),
    changed({ pixelTop: bumped(plain.pixelTop) }),
    changed({ pixelWidth: bumped(plain.pixelWidth) }),
    changed({ pixelHeight: bumped(plain.pixelHeight) }),
    changed({ entryHeightMm: plain.entryHeightMm.map((mm) => mm + 0.001) }),
    changed({ columnPitchMm: 600 }),
    changed({ rowPitchMm: 600 }),
    zoneKey(plain, { ...limits, usablePixels: 1 }),
    zoneKey(plain, { ...limits, panelsMost: 1 }),
    zoneKey(plain, { ...limits, counting: 'rectangle' }),
    zoneKey(plain, { ...limits, reachMm: Number.POSITIVE_INFINITY }),
    zoneKey(plain, { ...limits, lastObeysReach: true }),
  ];
  expect(new Set(keys).size).toBe(keys.length);
});

test('zoneKey takes a return left out for none', () => {
  expect(zoneKey(grid(1), { ...limits, lastObeysReach: false })).toBe(zoneKey(grid(1), limits));
});
