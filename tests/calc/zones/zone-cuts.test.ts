import { expect, test } from 'vitest';
import { computePorts } from '../../../src/calc/ports/compute-ports';
import type { SurfacePorts } from '../../../src/calc/ports/port-result';
import { measureStrip } from '../../../src/calc/zones/measure-strip';
import { zoneCuts, zoneRectangles } from '../../../src/calc/zones/zone-cuts';
import { plainPorts } from '../ports/plain-ports';
import { plainSurface, plainType } from './plain-surface';

// A wall of 7 columns x 4 rows whose columns 4 to 6 have a door of two rows; 12 panels of 216 x 216 a port.
const wall = plainSurface({
  columns: 7,
  bands: [{ type: plainType(216), rows: 4 }],
  isHole: (column, row) => column >= 4 && column <= 6 && row <= 2,
});
const ports = computePorts(plainPorts({ wall })).surfaces[0]!;
const oneUp = [measureStrip(wall, 0, 4)];
const twoUp = [measureStrip(wall, 0, 2), measureStrip(wall, 2, 4)];

test('zoneCuts counts processors, canvas, blanks and the least ports of every width', () => {
  const cuts = zoneCuts(oneUp, ports, 5);
  expect(cuts.map(({ columns, processors, blankColumns }) => [columns, processors, blankColumns])).toEqual([
    [1, 7, 0],
    [2, 4, 1],
    [3, 3, 2],
    [4, 2, 1],
    [5, 2, 3],
  ]);
  // Four columns of four less a door of two: 14 panels; 12 a port.
  expect(cuts[3]).toMatchObject({ canvas: { width: 864, height: 864 }, portsAtLeast: 2 });
  expect(cuts[2]?.portsAtLeast).toBe(1);
});

test('zoneCuts counts no zone where there is no panel', () => {
  // Three columns wide, the lower strip has its middle zone in the door.
  expect(zoneCuts(twoUp, ports, 3)[2]).toMatchObject({ up: 2, processors: 5, canvas: { width: 648, height: 432 } });
});

test('zoneRectangles lists the zones with panels, the lowest strip first', () => {
  expect(zoneRectangles(twoUp, 3, ports)).toEqual([
    { firstColumn: 1, columns: 3, firstRow: 1, rows: 2, panels: 6, portsAtLeast: 1 },
    { firstColumn: 7, columns: 1, firstRow: 1, rows: 2, panels: 2, portsAtLeast: 1 },
    { firstColumn: 1, columns: 3, firstRow: 3, rows: 2, panels: 6, portsAtLeast: 1 },
    { firstColumn: 4, columns: 3, firstRow: 3, rows: 2, panels: 6, portsAtLeast: 1 },
    { firstColumn: 7, columns: 1, firstRow: 3, rows: 2, panels: 2, portsAtLeast: 1 },
  ]);
});

test('zoneRectangles counts the least ports of mixed panels by their pixels and by the chain', () => {
  const mixed: SurfacePorts = { ...ports, byType: [...ports.byType, ...ports.byType], usablePixels: 100_000 };
  // 6 panels of 46,656 px: 279,936 / 100,000 is 3 ports by pixels; 6 a chain of 1.
  expect(zoneRectangles(twoUp, 3, mixed)[0]?.portsAtLeast).toBe(3);
  expect(zoneRectangles(twoUp, 3, { ...mixed, panelsMost: 1 })[0]?.portsAtLeast).toBe(6);
  // Four a chain: six panels are two runs, whatever their pixels.
  expect(zoneRectangles(twoUp, 3, { ...mixed, usablePixels: 1e6, panelsMost: 4 })[0]?.portsAtLeast).toBe(2);
});

test('zoneRectangles counts a port a panel where nothing can be shared', () => {
  expect(zoneRectangles(twoUp, 3, { ...ports, usablePixels: 0 })[0]?.portsAtLeast).toBe(6);
});
