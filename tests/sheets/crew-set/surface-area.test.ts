import { expect, test } from 'vitest';
import { surfaceArea } from '../../../src/sheets/crew-set/surface-area';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

const all = { allTags: true } as const;
const parts = stageFixture({
  columns: 6,
  rows: 6,
  jointDeg: 0,
  zoneColumns: 3,
  baseMm: 200,
  splitAboveRow: 3,
  ceilingDiameterMm: 4000,
});

test('surfaceArea measures rows of a wall from the floor, those above it from their own foot', () => {
  const { area } = surfaceArea(parts, 0, 'behind', all);
  expect(area.part).toEqual({ firstColumn: 1, columns: 6, firstRow: 1, rows: 6 });
  // 200 of base and 6 x 500; rows 3 and 4 alone 1000.
  expect([area.heightMm(1, 6), area.heightMm(3, 2)]).toEqual([3200, 1000]);
  expect(surfaceArea(parts, 1, 'inside', all).area.heightMm(1, 2)).toBe(1000);
});

test('surfaceArea keeps room for a tag under the other where several cables come to one column', () => {
  const usual = surfaceArea(parts, 0, 'behind', all).space.belowMm;
  expect(usual).toBe(10);
  // Every panel a run of its own: six cables a column, at least 3.1 mm from tag to tag within 0.66 of the space.
  const runs = Array.from({ length: 36 }, (_, i) => ({ ...parts.runs.runs[0]!, start: i, count: 1 }));
  const many = surfaceArea({ ...parts, runs: { ...parts.runs, runs } }, 0, 'behind', all).space.belowMm;
  expect((many * 0.66) / 5).toBeCloseTo(3.1, 9);
  // Of a part the cables that come to it count: row 6 alone has one a column.
  const top = { firstColumn: 1, columns: 6, firstRow: 6, rows: 1 };
  expect(
    surfaceArea({ ...parts, runs: { ...parts.runs, runs } }, 0, 'behind', { ...all, part: top }).space.belowMm,
  ).toBe(10);
});

test('surfaceArea counts returns among the cables of a column', () => {
  const [run] = parts.runs.runs;
  const to = (returnPort: string | null) => {
    const runs = Array.from({ length: 4 }, (_, i) => ({ ...run!, start: i, count: 1, returnPort }));
    return surfaceArea({ ...parts, runs: { ...parts.runs, runs } }, 0, 'behind', all).space.belowMm;
  };
  expect(to('1A-02')).toBeGreaterThan(to(null));
});

test('surfaceArea keeps room beside a ceiling whose cables come from a side', () => {
  const beside = (ceilingEntry: typeof parts.ceilingEntry) =>
    surfaceArea({ ...parts, ceilingEntry }, 1, 'inside', all).space.besideMm;
  expect(beside('left')).toBeGreaterThan(beside('bottom'));
  expect(beside('right')).toBeGreaterThan(beside('bottom'));
  const round = (ceilingEntry: typeof parts.ceilingEntry) =>
    surfaceArea({ ...parts, ceilingEntry }, 1, 'inside', all).space.roundMm;
  expect(round('top')).toBe(round('bottom') + 10);
});

test('surfaceArea of an overview keeps room for one row of tags, however many cables there are', () => {
  const runs = Array.from({ length: 36 }, (_, i) => ({ ...parts.runs.runs[0]!, start: i, count: 1 }));
  const many = { ...parts, runs: { ...parts.runs, runs } };
  expect(surfaceArea(many, 0, 'behind', { allTags: false }).space.belowMm).toBe(10);
});
