import { expect, test } from 'vitest';
import { markDoneUnrolled } from '../../src/sheets/mark-done';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';

// A flat wall of 4 columns and 3 rows of panels of 500 mm, numbers 0 to 11 by column and row from the floor, and a ceiling.
const parts = stageFixture({ columns: 4, rows: 3, jointDeg: 0, ceilingDiameterMm: 2000 });
const table = parts.surfaces.surfaces[0]!;
const strips = [{ firstColumn: 1, columns: 4 }];
const doneAt = (...panels: number[]) =>
  Uint8Array.from({ length: parts.surfaces.total }, (_, n) => (panels.includes(n) ? 1 : 0));

test('markDoneUnrolled hatches a panel where it lies, by three strokes rising to the right', () => {
  const grid = layOutUnrolled(table, 'inside', strips, { aboveMm: 100, belowMm: 0 });
  // Panel 4 is column 2, row 2: from 500 to 1000 across; the top row begins 100 down, so that row 2 is from 600 to 1100.
  const { xyMm, ends } = markDoneUnrolled(grid, 0, doneAt(4));
  expect([...xyMm]).toEqual([500, 850, 750, 600, 500, 1100, 1000, 600, 750, 1100, 1000, 850]);
  expect([...ends]).toEqual([2, 4, 6]);
});

test('markDoneUnrolled follows the wall when it is seen from behind', () => {
  const grid = layOutUnrolled(table, 'behind', strips, { aboveMm: 100, belowMm: 0 });
  // Column 2 of 4 is the third from the left.
  const { xyMm } = markDoneUnrolled(grid, 0, doneAt(4));
  expect([...xyMm].slice(0, 4)).toEqual([1000, 850, 1250, 600]);
});

test('markDoneUnrolled leaves out what is not done and what is on other surfaces', () => {
  const grid = layOutUnrolled(table, 'inside', strips, { aboveMm: 100, belowMm: 0 });
  expect(markDoneUnrolled(grid, 0, doneAt()).ends).toHaveLength(0);
  expect(markDoneUnrolled(grid, 0, doneAt(12, 13)).ends).toHaveLength(0);
  expect(markDoneUnrolled(grid, 0, doneAt(0, 11)).ends).toHaveLength(6);
});
