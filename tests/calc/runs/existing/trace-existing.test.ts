import { expect, test } from 'vitest';
import { traceExisting } from '../../../../src/calc/runs/existing/trace-existing';
import type { ExistingWiring } from '../../../../src/plan/signal';
import { mode, plainProcessor, plainSignal } from '../../ports/plain-items';
import { plainSurface, plainType } from '../../zones/plain-surface';
import { type PlainRuns, plainRuns } from '../plain-runs';

const wall = plainSurface({ columns: 3, bands: [{ type: plainType(216), rows: 2 }] });
/** 'C1 R1 p1 1' a row. */
const wiring = (...rows: string[]): ExistingWiring => ({
  source: 'as built',
  rows: rows.map((text) => {
    const [column = '', row = '', port = '', place = '0'] = text.split(' ');
    return { panel: `${column} ${row}`, port, place: Number(place) };
  }),
});
const good = ['C1 R1 p1 1', 'C1 R2 p1 2', 'C2 R2 p1 3', 'C2 R1 p2 1', 'C3 R1 p2 2', 'C3 R2 p2 3'];
const trace = (rows: readonly string[], rest: PlainRuns = {}) =>
  traceExisting({ ...plainRuns({ wall, ...rest }), existingWiring: wiring(...rows) });

test('traceExisting measures the runs as they stand', () => {
  const traced = trace(good);
  // Panels by number: column after column from the floor. Three of 46,656 px of a port's 650,000.
  expect(traced.runs.map(({ port, panels }) => [port, panels])).toEqual([
    ['p1', [0, 1, 3]],
    ['p2', [2, 4, 5]],
  ]);
  expect(traced.runs[0]).toMatchObject({ pixels: 139_968, share: 139_968 / 650_000, entryHeightMm: 0, inReach: true });
  expect(traced.runs[0]?.usableShare).toBeCloseTo(139_968 / 585_000, 12);
  expect(traced).toMatchObject({
    source: 'as built',
    ports: 2,
    panelsPerPortMin: 3,
    panelsPerPortMax: 3,
    fullestShare: 139_968 / 650_000,
    entriesOutOfReach: 0,
    unknownPanels: [],
    twicePanels: [],
    missingPanels: [],
    gapPorts: [],
    apartPanels: [],
  });
});

test('traceExisting finds the shortest and the longest run', () => {
  const traced = trace(['C1 R1 p1 1', 'C1 R2 p1 2', 'C2 R2 p1 3', 'C2 R1 p2 1']);
  expect([traced.panelsPerPortMin, traced.panelsPerPortMax]).toEqual([1, 3]);
  expect(traced.fullestShare).toBe((3 * 46_656) / 650_000);
});

test('traceExisting of a single run has it as shortest and longest', () => {
  const traced = trace(['C1 R1 p1 1', 'C1 R2 p1 2']);
  expect(traced).toMatchObject({ panelsPerPortMin: 2, panelsPerPortMax: 2, fullestShare: (2 * 46_656) / 650_000 });
});

test('traceExisting takes places in their order, whatever the order of the rows', () => {
  expect(trace([...good].reverse()).runs.find(({ port }) => port === 'p1')?.panels).toEqual([0, 1, 3]);
});

test('traceExisting weighs the same wiring at another depth and way of counting', () => {
  // 10 bit packed leaves 520,000; the rectangle round C1 R1, C1 R2, C2 R2 has four panels' pixels.
  expect(trace(good, { base: mode(60, 10) }).fullestShare).toBeCloseTo(139_968 / 520_000, 12);
  const rectangle = trace(good, { processors: [plainProcessor({ counting: 'rectangle' })] });
  expect(rectangle.runs[0]?.pixels).toBe(4 * 46_656);
});

test('traceExisting names what makes no sense and keeps the rest', () => {
  const traced = trace([
    'C1 R1 p1 1',
    'C9 R1 p1 2',
    'C1 R2 p1 3',
    'C1 R1 p2 1',
    'C1 R1 p2 2',
    'C2 R1 p3 1',
    'C2 R2 p3 1',
    'C3 R1 p4 2',
    'X R1 p5 1',
  ]);
  expect(traced.unknownPanels).toEqual(['C9 R1', 'X R1']);
  expect(traced.twicePanels).toEqual([0]);
  expect(traced.missingPanels).toEqual([5]);
  expect(traced.gapPorts).toEqual(['p3', 'p4']);
  expect(traced.ports).toBe(5);
  expect(traced.runs.map(({ port }) => port)).toEqual(['p1', 'p2', 'p3', 'p4']);
});

test('traceExisting names a panel that does not touch the one before it', () => {
  // From C1 R1 to C2 R2 is a diagonal.
  expect(trace(['C1 R1 p1 1', 'C2 R2 p1 2', 'C2 R1 p1 3']).apartPanels).toEqual([3]);
});

test('traceExisting finds entries above reach', () => {
  const traced = trace(['C1 R2 p1 1', 'C1 R1 p1 2'], { signal: plainSignal({ reachMm: 400 }) });
  expect(traced.runs[0]).toMatchObject({ entryHeightMm: 500, inReach: false });
  expect(traced.entriesOutOfReach).toBe(1);
});

test('traceExisting without a processor knows no shares, and without rows no runs', () => {
  const blind = trace(good, { signal: plainSignal({ processorId: null }) });
  expect(blind).toMatchObject({ fullestShare: null, panelsPerPortMax: 3 });
  expect(blind.runs[0]).toMatchObject({ share: null, usableShare: null });
  expect(trace([])).toMatchObject({ ports: 0, panelsPerPortMin: null, missingPanels: [0, 1, 2, 3, 4, 5] });
});
