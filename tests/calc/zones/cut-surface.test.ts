import { expect, test } from 'vitest';
import { computePorts } from '../../../src/calc/ports/compute-ports';
import { cutSurface } from '../../../src/calc/zones/cut-surface';
import type { SurfaceSignal } from '../../../src/plan/signal';
import { leastBlanking } from '../links/least-blanking';
import { mode, plainProcessor, plainSignal } from '../ports/plain-items';
import { plainPorts } from '../ports/plain-ports';
import { columnSolver } from '../runs/column-wiring';
import { plainSurface, plainType } from './plain-surface';

function cut(columns: number, rows: number, ports: number, own: Partial<SurfaceSignal> = {}) {
  const processor = plainProcessor({ sheetPixels: null }, { outlets: { kind: 'direct', ports } });
  const table = plainSurface({ columns, bands: [{ type: plainType(216), rows }] });
  const given = plainPorts({ wall: table, processors: [processor] });
  const solver = columnSolver();
  const found = cutSurface({
    table,
    signal: plainSignal(),
    own: {
      surfaceId: 'a',
      processorId: 'proc',
      nodeId: null,
      zoneColumnsMost: null,
      returns: null,
      zonesUp: null,
      ...own,
    },
    processor,
    ports: computePorts(given).surfaces[0]!,
    served: [mode(60)],
    choice: leastBlanking,
    solve: solver.solve,
  });
  return { found, calls: solver.calls() };
}

test('cutSurface asks the wiring, not only the least possible, whether the ports suffice', () => {
  // 4 rows: three columns on a port would do by count (12 of 13), but this wiring takes a port a column.
  const { found } = cut(12, 4, 3);
  expect(found?.cut).toMatchObject({ columns: 3, processors: 4 });
  expect(found?.zones.map(({ runs }) => runs)).toEqual([3, 3, 3, 3]);
  expect(found?.portsSuffice).toBe(true);
});

test('cutSurface lists the widths that may do, without those whose wiring failed', () => {
  const { found } = cut(12, 4, 3);
  expect(found?.widths.map(({ columns }) => columns)).toEqual([3, 2, 1]);
});

test('cutSurface goes up where not even one column has ports enough', () => {
  // 30 rows of one column take three ports of 13 panels; with two ports a processor, two zones up of 15 rows do.
  const { found } = cut(3, 30, 2);
  expect(found?.cut.up).toBe(2);
  expect(found?.zones).toHaveLength(6);
});

test('cutSurface gives the narrowest zones where the number of zones up leaves too few ports', () => {
  const { found } = cut(3, 30, 2, { returns: null, zonesUp: 1 });
  expect(found).toMatchObject({ portsSuffice: false, cut: { columns: 1, up: 1 } });
});

test('cutSurface does not try every number of zones up of a wall far too high', () => {
  // 800 rows of 216 px under a canvas 8192 px high: 37 rows a zone, so the search starts at 22 zones up.
  const { found, calls } = cut(2, 800, 20);
  expect(found?.cut.up).toBe(22);
  expect(calls).toBeLessThan(100);
});
