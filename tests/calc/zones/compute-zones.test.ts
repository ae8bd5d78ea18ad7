import fc from 'fast-check';
import { expect, test } from 'vitest';
import { computeZones } from '../../../src/calc/zones/compute-zones';
import type { SurfaceSignal } from '../../../src/plan/signal';
import { mode, plainPanel, plainProcessor, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType, setOf } from './plain-surface';
import { plainZones } from './plain-zones';

const own = (rest: Partial<SurfaceSignal>): SurfaceSignal => ({
  surfaceId: 'a',
  processorId: 'proc',
  nodeId: null,
  zoneColumnsMost: null,
  returns: null,
  zonesUp: null,
  ...rest,
});
const bands = (rows: number, pixels = 216) => [{ type: plainType(pixels), rows }];
const ring = plainSurface({ columns: 136, bands: bands(13) });
const byLine = plainProcessor({ sheetPixels: null });

// Common practice, no source: 136 columns x 13 rows of 216 x 216 panels in equal zones of at most 13 columns need 11
// processors, and all eleven get the same canvas, 2808 x 2808.
test('computeZones cuts 136 columns of 13 rows into 11 zones of the same 2808 x 2808', () => {
  const signal = plainSignal({ bySurface: [own({ zoneColumnsMost: 13 })] });
  const { zones, surfaces, processors } = computeZones(
    plainZones({ wall: ring, signal, processors: [byLine], base: mode(60) }),
  );
  expect(processors).toBe(11);
  expect(new Set(zones.map(({ canvasWidth, canvasHeight }) => `${canvasWidth}x${canvasHeight}`))).toEqual(
    new Set(['2808x2808']),
  );
  expect(zones.map(({ columns }) => columns)).toEqual([13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 6]);
  expect(zones.map(({ firstColumn }) => firstColumn).slice(0, 3)).toEqual([1, 14, 27]);
  expect(zones.at(-1)).toMatchObject({ blankColumns: 7, panels: 78, processor: 11 });
  expect(surfaces[0]).toMatchObject({ zones: 11, canvasWidth: 2808, canvasHeight: 2808, stoppedBy: null });
});

// 8,900,000 px at 2808 px high is 3169 px wide: 14 columns of 216. Two breakouts of ten ports: 14 columns on 14 ports.
test('computeZones takes the fewest processors that canvas and ports allow', () => {
  const { zones, surfaces } = computeZones(plainZones({ wall: ring, processors: [byLine] }));
  expect(zones).toHaveLength(10);
  expect(zones[0]).toMatchObject({ columns: 14, canvasWidth: 3024, ports: 14, breakouts: 2 });
  expect(surfaces[0]?.widths.map(({ columns }) => columns)).toEqual([14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1]);
  const chosen = surfaces[0]?.widths.find((width) => width.chosen);
  expect(chosen).toMatchObject({ columns: 14, processors: 10, blankColumns: 4, portsAZone: 14, portsExact: true });
  expect(chosen?.usedShare).toBeCloseTo((3024 * 2808) / 8_900_000, 12);
});

test('computeZones counts breakouts by the ports in use, and none on direct ports', () => {
  const breakoutsOf = (outlets: ReturnType<typeof plainProcessor>['outlets']) =>
    computeZones(plainZones({ processors: [plainProcessor({}, { outlets })] })).zones[0]?.breakouts;
  expect(breakoutsOf({ kind: 'breakouts', breakoutId: 'box', most: 1 })).toBe(1);
  expect(breakoutsOf({ kind: 'direct', ports: 16 })).toBe(0);
});

test('computeZones gives exact ports for the width it takes and the least possible for the others', () => {
  const { surfaces } = computeZones(plainZones({ wall: plainSurface({ columns: 4, bands: bands(4) }) }));
  const figures = surfaces[0]?.widths.map(({ columns, portsAZone, portsExact }) => [columns, portsAZone, portsExact]);
  // Four columns of four on four ports; by count 16, 12, 8 and 4 panels of 12 a port.
  expect(figures).toEqual([
    [4, 4, true],
    [3, 1, false],
    [2, 1, false],
    [1, 1, false],
  ]);
});

test('computeZones takes the fewest blank columns among equals', () => {
  const wall = plainSurface({ columns: 10, bands: bands(4) });
  const signal = plainSignal({ bySurface: [own({ zoneColumnsMost: 7 })] });
  const { zones } = computeZones(plainZones({ wall, signal }));
  expect(zones.map(({ columns }) => columns)).toEqual([5, 5]);
});

test('computeZones scales a processor by depth and rate', () => {
  // 10 bit: 7,120,000 px / 2808 = 2535 px: 11 columns; 13 rows on two ports a column are 22 ports, more than 20: 10 columns.
  const { zones, surfaces } = computeZones(plainZones({ wall: ring, base: mode(60, 10) }));
  expect(zones[0]).toMatchObject({ columns: 10, ports: 20 });
  expect(surfaces[0]?.widths[0]?.columns).toBe(10);
});

test('computeZones numbers processors through the stage, the lower zones of a surface first', () => {
  const wall = plainSurface({ letter: 'A', columns: 30, bands: bands(30) });
  const ceiling = plainSurface({ letter: 'B', kind: 'ceiling', columns: 4, bands: bands(4) });
  const { zones } = computeZones(plainZones({ surfaces: setOf(wall, ceiling), processors: [byLine] }));
  expect(zones.map(({ processor }) => processor)).toEqual(zones.map((_, i) => i + 1));
  const ups = [...new Set(zones.filter(({ letter }) => letter === 'A').map(({ firstRow }) => firstRow))];
  expect(ups).toEqual([...ups].sort((a, b) => a - b));
  expect(zones.at(-1)?.letter).toBe('B');
});

test('computeZones splits a wall too high for a canvas into as few zones up as fit, rows as even as they go', () => {
  // 17 rows of 216 are 3672 px; a canvas may be 2160 high: two up, of 9 and 8 rows.
  const low = plainProcessor({}, { canvas: { pixels: 8_900_000, widest: 8192, highest: 2160, inputGbps: null } });
  const { zones, surfaces } = computeZones(
    plainZones({ wall: plainSurface({ columns: 8, bands: bands(17) }), processors: [low] }),
  );
  expect(new Set(zones.map(({ firstRow, rows }) => `${firstRow}+${rows}`))).toEqual(new Set(['1+9', '10+8']));
  expect(surfaces[0]?.canvasHeight).toBe(1944);
});

test('computeZones does as told with zones up', () => {
  const signal = plainSignal({ bySurface: [own({ returns: null, zonesUp: 3 })] });
  const { zones } = computeZones(plainZones({ wall: plainSurface({ columns: 8, bands: bands(12) }), signal }));
  expect(zones.map(({ firstRow, rows }) => [firstRow, rows])).toEqual([
    [1, 4],
    [5, 4],
    [9, 4],
  ]);
});

test('computeZones on a ceiling puts fewer processors before fewer zones up', () => {
  // 5 x 9 panels of 1000 px; a canvas of 3000 wide, 9000 high and 9 million pixels: one up takes five strips of one
  // column, three up two of 3 x 3 each: six; two up of 5 rows hold one column: ten. One up it stays.
  const square = plainProcessor(
    { sheetPixels: 9e6, lineMbps: 1e5 },
    {
      canvas: { pixels: 9_000_000, widest: 3000, highest: 9000, inputGbps: null },
      outlets: { kind: 'direct', ports: 9 },
    },
  );
  const ceiling = (columns: number, rows: number) =>
    plainSurface({ kind: 'ceiling', columns, bands: [{ type: plainType(1000), rows }] });
  const zonesOf = (columns: number, rows: number) =>
    computeZones(plainZones({ wall: ceiling(columns, rows), processors: [square], panels: [plainPanel(1000)] })).zones
      .length;
  expect(zonesOf(5, 9)).toBe(5);
  // 6 x 6: one up holds one column (6 zones), two up 3 x 3 (4 zones).
  expect(zonesOf(6, 6)).toBe(4);
  const wall = { ...ceiling(6, 6), kind: 'wall' as const };
  expect(computeZones(plainZones({ wall, processors: [square], panels: [plainPanel(1000)] })).zones).toHaveLength(6);
});

test('computeZones leaves no zone without a panel and follows mixed bands on the real canvas', () => {
  const wall = plainSurface({
    columns: 6,
    bands: [
      { type: plainType(200), rows: 2 },
      { type: plainType(100), rows: 2 },
    ],
    isHole: (column) => column === 3 || column === 4,
  });
  const signal = plainSignal({ bySurface: [own({ zoneColumnsMost: 2, returns: null, zonesUp: 2 })] });
  const panels = [plainPanel(200), plainPanel(100)];
  const { zones, surfaces } = computeZones(plainZones({ wall, signal, panels }));
  expect(zones.map(({ firstColumn, firstRow }) => [firstColumn, firstRow])).toEqual([
    [1, 1],
    [5, 1],
    [1, 3],
    [5, 3],
  ]);
  expect(surfaces[0]).toMatchObject({ canvasWidth: 400, canvasHeight: 400 });
});

test('computeZones narrows zones to what the input carries', () => {
  const input = (inputGbps: number | null) =>
    plainProcessor({ sheetPixels: null }, { canvas: { pixels: 8_900_000, widest: 8192, highest: 8192, inputGbps } });
  const of = (inputGbps: number | null) =>
    computeZones(plainZones({ wall: ring, processors: [input(inputGbps)] })).surfaces[0]!;
  // Free: 14 columns, 3024 x 2808 at 60 and 8 bit. Half of its payload carries about half the columns.
  const free = of(null);
  expect(free.inputBps).toBeGreaterThan(3024 * 2808 * 60 * 24);
  const half = of(free.inputBps! / 2e9);
  expect(half.canvasWidth).toBeLessThanOrEqual(3024 / 2);
  expect(half.inputBps!).toBeLessThanOrEqual(free.inputBps! / 2);
});

test('computeZones says why there is no zone', () => {
  expect(computeZones(plainZones({ signal: plainSignal({ processorId: null }) })).surfaces[0]).toMatchObject({
    zones: 0,
    canvasWidth: 0,
    canvasHeight: 0,
    inputBps: null,
    widths: [],
    stoppedBy: 'No processor is chosen.',
  });
  const signal = plainSignal({ bySurface: [own({ returns: null, zonesUp: 1 })] });
  const low = plainProcessor({}, { canvas: { pixels: 8_900_000, widest: 8192, highest: 300, inputGbps: null } });
  expect(computeZones(plainZones({ signal, processors: [low] })).surfaces[0]?.stoppedBy).toContain('zones up');
});

test('computeZones gives the narrowest zones where even they need more ports than there are', () => {
  const few = plainProcessor({ sheetPixels: 50_000 }, { outlets: { kind: 'direct', ports: 2 } });
  const signal = plainSignal({ freeShare: 0, bySurface: [own({ returns: null, zonesUp: 1 })] });
  const { zones, surfaces } = computeZones(plainZones({ signal, processors: [few] }));
  expect(zones).toHaveLength(4);
  expect(zones[0]?.ports).toBe(3);
  expect(surfaces[0]?.stoppedBy).toContain('more ports');
});

test('computeZones: every panel in one zone, canvases equal, parts sum to the whole', () => {
  const hole = fc.array(fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 9 })), { maxLength: 30 });
  const size = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 9 }));
  fc.assert(
    fc.property(size, hole, fc.integer({ min: 1, max: 9 }), fc.boolean(), ([columns, rows], holes, most, hangs) => {
      const isHole = (c: number, r: number) => holes.some(([hc, hr]) => hc === c && hr === r);
      const wall = plainSurface({ kind: hangs ? 'ceiling' : 'wall', columns, bands: bands(rows), isHole });
      const small = plainProcessor({}, { canvas: { pixels: 600_000, widest: 4000, highest: 900, inputGbps: null } });
      const signal = plainSignal({ bySurface: [own({ zoneColumnsMost: most })] });
      const { zones, surfaces } = computeZones(plainZones({ wall, signal, processors: [small] }));
      expect(zones.reduce((sum, { panels }) => sum + panels, 0)).toBe(wall.count);
      for (const zone of zones) {
        expect(zone.panels).toBeGreaterThan(0);
        expect(zone.columns + zone.blankColumns).toBeLessThanOrEqual(most);
        expect(zone.canvasWidth * zone.canvasHeight).toBeLessThanOrEqual(600_000);
        expect(zone.canvasHeight).toBeLessThanOrEqual(900);
      }
      const seen = new Set<string>();
      for (const { firstColumn, columns: wide, firstRow, rows: high } of zones) {
        for (let c = firstColumn; c < firstColumn + wide; c++) {
          for (let r = firstRow; r < firstRow + high; r++) {
            expect(seen.has(`${c} ${r}`)).toBe(false);
            seen.add(`${c} ${r}`);
          }
        }
      }
      expect(surfaces[0]?.widths.filter(({ chosen }) => chosen)).toHaveLength(wall.count > 0 ? 1 : 0);
    }),
  );
});
