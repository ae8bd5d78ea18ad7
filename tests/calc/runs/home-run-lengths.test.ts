import { expect, test } from 'vitest';
import { homeRunLengths } from '../../../src/calc/runs/home-run-lengths';
import type { Run } from '../../../src/calc/runs/run-result';
import type { StageParts } from '../../../src/sheets/stage-parts';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

/** A wall of 9 columns on a base of 200 mm, in zones of 3 columns; each column a run from row 1 up. */
const parts = stageFixture({
  columns: 9,
  rows: 4,
  jointDeg: 0,
  baseMm: 200,
  zoneColumns: 3,
  splitAboveRow: 0,
  ceilingDiameterMm: 4000,
});

type Given = Parameters<typeof homeRunLengths>[3];
const lengths = (
  changes: (run: Run) => Partial<Run> = () => ({}),
  given: Partial<Given> = {},
  stage: StageParts = parts,
) =>
  homeRunLengths(
    stage.surfaces,
    stage.zones,
    { ...stage.runs, runs: stage.runs.runs.map((run) => ({ ...run, ...changes(run) })) },
    { ceilingEntry: 'bottom', lengths: 'metric', ...given },
  );

test('homeRunLengths of a wall go along its foot from the middle of the zone, then up to the entry', () => {
  // Middle column: 200 up and 1000 of slack; a column beside it 500 more.
  expect(
    lengths()
      .slice(0, 3)
      .map(({ home }) => home),
  ).toEqual([
    { leastMm: 1700, stockMm: 2000 },
    { leastMm: 1200, stockMm: 2000 },
    { leastMm: 1700, stockMm: 2000 },
  ]);
});

test('homeRunLengths add a tenth of slack where that is more than a metre', () => {
  // 500 along and 29 500 up are 30 000; a tenth on top 33 000: longer than 30 m, so 40 m.
  expect(lengths(() => ({ entryHeightMm: 29_500 }))[0]!.home).toEqual({ leastMm: 33_000, stockMm: 40_000 });
});

test('homeRunLengths take stock lengths in feet where lengths are in feet', () => {
  // 5 ft is 1524 mm, 10 ft 3048 mm.
  expect(
    lengths(undefined, { lengths: 'feet' })
      .slice(0, 2)
      .map(({ home }) => home.stockMm),
  ).toEqual([3048, 1524]);
});

test('homeRunLengths longer than any stock length have none', () => {
  expect(lengths(() => ({ entryHeightMm: 100_000 }))[0]!.home).toEqual({ leastMm: 110_550, stockMm: null });
});

test('homeRunLengths lead returns to the middle of the zone whose processor they go back to', () => {
  const [first] = lengths(() => ({ returnPort: '2A-01', returnProcessor: 2, exitHeightMm: 1700 }));
  // From column 1 to column 5: 4 columns of 500, up 1700, a metre of slack.
  expect(first!.back).toEqual({ leastMm: 4700, stockMm: 5000 });
  expect(lengths()[0]!.back).toBeNull();
});

test('homeRunLengths of a return to another surface are not known', () => {
  const ceilingZone = parts.zones.find(({ surfaceId }) => surfaceId === 'ceiling-b')!;
  expect(lengths(() => ({ returnPort: 'x', returnProcessor: ceilingZone.processor }))[0]!.back).toBeNull();
});

test.each(['bottom', 'top', 'left', 'right'] as const)('homeRunLengths of a ceiling come from its %s edge', (edge) => {
  const run = parts.runs.runs.findIndex(({ surfaceId }) => surfaceId === 'ceiling-b');
  const table = parts.surfaces.surfaces[1]!;
  const local = parts.runs.order[parts.runs.runs[run]!.start]! - parts.surfaces.offsets[1]!;
  const zone = parts.zones[parts.runs.runs[run]!.zone]!;
  const [column, row] = [table.column[local]!, table.row[local]!];
  const across = Math.abs(column - (zone.firstColumn + (zone.columns - 1) / 2)) * 500;
  const along = Math.abs(row - (1 + (table.rows - 1) / 2)) * 500;
  const way = {
    bottom: across + (row - 1) * 500,
    top: across + (table.rows - row) * 500,
    left: along + (column - 1) * 500,
    right: along + (table.columns - column) * 500,
  }[edge];
  expect(lengths(undefined, { ceilingEntry: edge })[run]!.home.leastMm).toBe(way + Math.max(1000, way / 10));
});
