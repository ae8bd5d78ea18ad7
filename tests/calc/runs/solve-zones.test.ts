import fc from 'fast-check';
import { expect, test } from 'vitest';
import { computeRuns } from '../../../src/calc/runs/compute-runs';
import { areNeighbours } from '../../../src/calc/runs/hand-changes/are-neighbours';
import { solveZones } from '../../../src/calc/runs/solve-zones';
import { wireStage } from '../../../src/calc/runs/wire-stage';
import { zoneGrid } from '../../../src/calc/runs/zone-grid';
import { plainBreakout, plainPanel, plainProcessor, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType } from '../zones/plain-surface';
import { type PlainRuns, plainRuns } from './plain-runs';

const solve = solveZones();
const terms = { priority: 'repeats' as const, portsThere: 20, portsABreakout: 10 };
const limits = { usablePixels: 585_000, panelsMost: 10, counting: 'panels' as const, reachMm: 2100 };
const surface = (columns: number, rows: number, holes: readonly (readonly number[])[] = []) =>
  plainSurface({
    columns,
    bands: [{ type: plainType(216), rows }],
    isHole: (c, r) => holes.some(([hc, hr]) => hc === c && hr === r),
  });
const grid = (columns: number, rows: number, holes: readonly (readonly number[])[] = []) =>
  zoneGrid(surface(columns, rows, holes), { firstColumn: 1, columns, firstRow: 1, rows }, 'bottom').grid;
const compute = (rest: PlainRuns) => {
  const given = plainRuns({ solve, ...rest });
  return { given, results: computeRuns(given, wireStage(given)) };
};

test('solveZones remembers a shape that it has wired', () => {
  expect(solve(grid(4, 4), limits, terms)).toBe(solve(grid(4, 4), limits, terms));
});

// Common practice, no source: 13 x 13 on two breakouts of ten ports, 10 panels to a port, every entry no higher than the
// fifth panel, takes 20 ports; with fewest ports first a regular way has 18.
test('solveZones wires a block of 13 x 13 on the ports of two breakouts, within reach', () => {
  const { chosen, least } = solve(grid(13, 13), limits, terms);
  expect(chosen.entriesOutOfReach).toBe(0);
  expect(chosen.ports).toBeLessThanOrEqual(20);
  expect(least).toBe(17);
  const fewest = solve(grid(13, 13), limits, { ...terms, priority: 'fewest-ports' });
  expect(fewest.chosen.entriesOutOfReach).toBe(0);
  expect(fewest.chosen.ports).toBeLessThanOrEqual(18);
});

test('solveZones: every panel on one run, none above a port, neighbours touching, never below the least', () => {
  const hole = fc.array(fc.tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 })), { maxLength: 14 });
  const size = fc.integer({ min: 1, max: 7 });
  fc.assert(
    fc.property(size, size, hole, fc.integer({ min: 1, max: 12 }), (columns, rows, holes, most) => {
      const zone = grid(columns, rows, holes);
      fc.pre(zone.present.some((one) => one === 1));
      const { chosen, ways, least } = solve(zone, { ...limits, panelsMost: most }, terms);
      expect(ways).toContain(chosen);
      expect(chosen.ports).toBeGreaterThanOrEqual(least);
      const seen = new Set(chosen.order);
      expect(seen.size).toBe(chosen.order.length);
      expect(seen.size).toBe(zone.present.reduce((sum, one) => sum + one, 0));
      for (let i = 0; i < chosen.ports; i++) {
        const run = chosen.order.subarray(chosen.start[i], chosen.start[i + 1]);
        expect(run.length).toBeLessThanOrEqual(most);
        expect(chosen.pixels[i]).toBeLessThanOrEqual(limits.usablePixels);
        run.subarray(1).forEach((next, at) => {
          expect(areNeighbours(zone, run[at]!, next)).toBe(true);
        });
      }
    }),
    { numRuns: 60 },
  );
});

test('solveZones: a mirrored zone needs the same number of ports', () => {
  const hole = fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })), { maxLength: 10 });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), hole, (columns, rows, holes) => {
      const mirrored = holes.map(([column, row]) => [columns + 1 - column!, row!] as const);
      const one = solve(grid(columns, rows, holes), limits, terms).chosen;
      const other = solve(grid(columns, rows, mirrored), limits, terms).chosen;
      expect(other?.ports).toBe(one?.ports);
    }),
    { numRuns: 60 },
  );
});

// Common practice, no source: see compute-zones.test.ts; here the zones are judged by the search itself.
test('solveZones drives 136 columns of 13 rows from 11 processors, each with the ports of two breakouts', () => {
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 13, returns: null, zonesUp: null };
  const { given, results } = compute({
    wall: surface(136, 13),
    processors: [plainProcessor({ sheetPixels: null })],
    signal: plainSignal({ bySurface: [own] }),
  });
  expect(given.zones.zones).toHaveLength(11);
  expect(given.zones.surfaces[0]).toMatchObject({ canvasWidth: 2808, canvasHeight: 2808 });
  expect(results.zones.every(({ ports, entriesOutOfReach }) => ports <= 20 && entriesOutOfReach === 0)).toBe(true);
  expect(results.order).toHaveLength(136 * 13);
});

test('solveZones: of eleven zones the last, six columns wide, is wired with the figures of the others, and as its zone says', () => {
  // By hand: single columns of 9 up from row 5, pairs of columns folded below, the column of 4 that is over in 13 but not in 6.
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 13, returns: null, zonesUp: null };
  const { given, results } = compute({
    wall: surface(136, 13),
    panels: [plainPanel(216)],
    processors: [plainProcessor({ sheetPixels: null })],
    signal: plainSignal({ bySurface: [own], panelsMost: 10 }),
  });
  expect(given.zones.zones.at(-1)).toMatchObject({ columns: 6, ports: 9 });
  expect(given.zones.zones.map(({ ports }) => ports)).toEqual(results.zones.map(({ ports }) => ports));
  expect(new Set(results.zones.map(({ way }) => JSON.stringify(way))).size).toBe(1);
  expect(results.surfaces[0]?.ways.find(({ chosen }) => chosen)).toMatchObject({ figures: 3, fewest: 4, most: 9 });
});

test('solveZones wires the zones of a surface together, and each zone has the ports that its runs take', () => {
  // By hand in match-zones.test.ts: 13 and 10 columns of 14 rows, 12 panels a port, three breakouts of eight ports.
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 13, returns: null, zonesUp: null };
  const { given, results } = compute({
    wall: surface(75, 14),
    panels: [plainPanel(216)],
    processors: [plainProcessor({}, { outlets: { kind: 'breakouts', breakoutId: 'box', most: 3 } })],
    breakouts: [plainBreakout({ ports: 8 })],
    signal: plainSignal({ bySurface: [own] }),
  });
  expect(given.zones.zones.map(({ columns, ports }) => [columns, ports])).toEqual([
    ...Array<number[]>(5).fill([13, 16]),
    [10, 12],
  ]);
  expect(results.zones.map(({ ports }) => ports)).toEqual(given.zones.zones.map(({ ports }) => ports));
  expect(results.zones.every(({ way }) => way.kind === 'split' && way.aboveRow === 2 && way.wide === 5)).toBe(true);
});

test('solveZones: with fewest ports first, more headroom never needs fewer ports', () => {
  const percent = fc.integer({ min: 0, max: 60 });
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 8 }),
      fc.integer({ min: 1, max: 8 }),
      percent,
      percent,
      (columns, rows, a, b) => {
        const ports = (free: number) =>
          compute({
            wall: surface(columns, rows),
            panels: [plainPanel(216)],
            signal: plainSignal({ priority: 'fewest-ports', freeShare: free / 100, reachMm: 100_000 }),
          }).results.portsUsed;
        expect(ports(Math.max(a, b))).toBeGreaterThanOrEqual(ports(Math.min(a, b)));
      },
    ),
    { numRuns: 40 },
  );
});
