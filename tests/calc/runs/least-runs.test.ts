import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastRuns } from '../../../src/calc/runs/least-runs';
import { zoneGrid } from '../../../src/calc/runs/zone-grid';
import { plainSurface, plainType } from '../zones/plain-surface';
import { columnRuns } from './column-wiring';

const limits = { usablePixels: 585_000, panelsMost: 1000, counting: 'panels' as const, reachMm: 2100 };
const grid = (columns: number, rows: number, isHole?: (column: number, row: number) => boolean) => {
  const wall = plainSurface({ columns, bands: [{ type: plainType(216), rows }], ...(isHole ? { isHole } : {}) });
  return zoneGrid(wall, { firstColumn: 1, columns, firstRow: 1, rows }, 'bottom').grid;
};

// Common practice, no source: of a block of 13 x 13 with 10 panels to a port 17 ports are the least possible, with 11 it is 16.
test.each([
  [10, 17],
  [11, 16],
])('leastRuns of 13 x 13 panels with %i to a port is %i', (most, least) => {
  expect(leastRuns(grid(13, 13), { ...limits, panelsMost: most })).toBe(least);
  expect(leastRuns(grid(13, 13), { ...limits, usablePixels: most * 46_656 + 20_000 })).toBe(least);
});

test('leastRuns gives a panel that is too large a run of its own', () => {
  expect(leastRuns(grid(3, 2), { ...limits, usablePixels: 46_655 })).toBe(6);
  expect(leastRuns(grid(3, 2), { ...limits, panelsMost: 0 })).toBe(6);
});

test('leastRuns counts mixed panels by their pixels', () => {
  const bands = [
    { type: plainType(200), rows: 2 },
    { type: plainType(100), rows: 2 },
  ];
  const mixed = zoneGrid(
    plainSurface({ columns: 2, bands }),
    { firstColumn: 1, columns: 2, firstRow: 1, rows: 4 },
    'bottom',
  ).grid;
  // 4 x 40,000 + 4 x 10,000 = 200,000 px, by 60,000: 4, though six of the small panels would fit a port.
  expect(leastRuns(mixed, { ...limits, usablePixels: 60_000 })).toBe(4);
});

test('leastRuns of no panel is none', () => {
  expect(
    leastRuns(
      grid(2, 2, () => true),
      limits,
    ),
  ).toBe(0);
});

test('leastRuns is never above what a wiring takes', () => {
  const place = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }));
  fc.assert(
    fc.property(fc.array(place, { maxLength: 12 }), fc.integer({ min: 1, max: 12 }), (holes, most) => {
      const zone = grid(6, 6, (c, r) => holes.some(([hc, hr]) => hc === c && hr === r));
      const own = { ...limits, panelsMost: most };
      expect(leastRuns(zone, own)).toBeLessThanOrEqual(columnRuns(zone, own).length);
    }),
  );
});
