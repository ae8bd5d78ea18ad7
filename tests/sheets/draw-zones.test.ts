import { describe, expect, it } from 'vitest';
import { zoneOfPanels } from '../../src/calc/zones/zone-of-panels';
import { drawZones } from '../../src/sheets/draw-zones';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { lengthOf } from './polylines';

const { surfaces, zones } = stageFixture({ columns: 6, rows: 4, jointDeg: 0, zoneColumns: 3 });
const table = surfaces.surfaces[0]!;
const spaces = { aboveMm: 1000, belowMm: 1000 };

describe('drawZones', () => {
  it('draws the border between two zones through the wall and beyond it above and below', () => {
    const grid = layOutUnrolled(table, 'behind', [{ firstColumn: 1, columns: 6 }], spaces);
    const [borders] = drawZones(grid, zones, zoneOfPanels(table, zones)).strokes;
    // 2000 through the wall, 0.8 of the space above, 0.2 of that below.
    expect(lengthOf(borders!.lines)).toBeCloseTo(2000 + 800 + 200, 6);
    expect(borders!.lines.xyMm.filter((_, i) => i % 2 === 0).every((x) => x === 1500)).toBe(true);
  });
  it('names each processor over its own columns, as they lie when seen from behind', () => {
    const grid = layOutUnrolled(table, 'behind', [{ firstColumn: 1, columns: 6 }], spaces);
    const [above, inside] = drawZones(grid, zones, zoneOfPanels(table, zones)).labels;
    expect([above!.count, inside!.count]).toEqual([2, 0]);
    expect(above!.at(0)).toMatchObject({ text: 'Processor 1', short: 'P1', xMm: 1500, to: { xMm: 3000 } });
    expect(above!.at(1)).toMatchObject({ text: 'Processor 2', xMm: 0, to: { xMm: 1500 } });
  });
  it('names a zone that two strips share on both', () => {
    const strips = [
      { firstColumn: 1, columns: 2 },
      { firstColumn: 3, columns: 4 },
    ];
    const grid = layOutUnrolled(table, 'inside', strips, spaces);
    expect(drawZones(grid, zones, zoneOfPanels(table, zones)).labels[0]!.count).toBe(3);
  });
  it('names a zone under another one inside it', () => {
    const stacked = [
      { ...zones[0]!, columns: 6, rows: 2 },
      { ...zones[1]!, firstColumn: 1, columns: 6, firstRow: 3, rows: 2 },
    ];
    const grid = layOutUnrolled(table, 'inside', [{ firstColumn: 1, columns: 6 }], spaces);
    const { labels, strokes } = drawZones(grid, stacked, zoneOfPanels(table, stacked));
    expect(labels[0]!.at(0).text).toBe('Processor 2');
    // The upper edge of row 2: 1000 below the top at 1000.
    expect(labels[1]!.at(0)).toMatchObject({ text: 'Processor 1', yMm: 2000 });
    expect(lengthOf(strokes[0]!.lines)).toBe(3000);
  });
});
