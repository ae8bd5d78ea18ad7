import { expect, test } from 'vitest';
import { markChangedUnrolled } from '../../src/sheets/mark-changed';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';

// A flat wall of 4 columns and 3 rows of panels of 500 mm, numbers 0 to 11 by column and row from the floor, and a ceiling.
const parts = stageFixture({ columns: 4, rows: 3, jointDeg: 0, ceilingDiameterMm: 2000 });
const grid = layOutUnrolled(parts.surfaces.surfaces[0]!, 'inside', [{ firstColumn: 1, columns: 4 }], {
  aboveMm: 100,
  belowMm: 0,
});
const changedAt = (...panels: number[]) =>
  Uint8Array.from({ length: parts.surfaces.total }, (_, n) => (panels.includes(n) ? 1 : 0));
const segments = (...panels: number[]) => {
  const { xyMm } = markChangedUnrolled(grid, 0, changedAt(...panels));
  return Array.from({ length: xyMm.length / 4 }, (_, i) => [...xyMm.slice(4 * i, 4 * i + 4)].join(' ')).sort();
};

test('markChangedUnrolled draws a line round a panel where it lies', () => {
  // Panel 4 is column 2, row 2: from 500 to 1000 across; the top row begins 100 down, so that row 2 is from 600 to 1100.
  expect(segments(4)).toEqual(['1000 1100 1000 600', '500 1100 1000 1100', '500 1100 500 600', '500 600 1000 600']);
});

test('markChangedUnrolled draws one line round neighbours', () => {
  // Rows 2 and 3 of column 2: panels 4 and 5, from 100 to 1100 down.
  expect(segments(4, 5)).toEqual(['1000 1100 1000 100', '500 100 1000 100', '500 1100 1000 1100', '500 1100 500 100']);
});

test('markChangedUnrolled draws nothing where nothing changed, or on another surface', () => {
  expect(segments()).toEqual([]);
  expect(segments(12, 13)).toEqual([]);
});
