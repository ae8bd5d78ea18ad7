import { expect, test } from 'vitest';
import { markChanges } from '../../src/sheets/mark-changes';
import { layOutUnrolled } from '../../src/sheets/unrolled-grid';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { flatGrid, lengthOf, polylines } from './polylines';

const grid = flatGrid({ columns: 4, rows: 3 });
/** Of the 4 x 3 panels, numbered from 100. */
const changed = (...places: readonly (readonly [number, number])[]) => {
  const panels = new Uint8Array(112);
  for (const [column, row] of places) panels[100 + grid.table.at[(column - 1) * 3 + row - 1]!] = 1;
  return panels;
};

test('markChanges outlines panels that touch together, dashed and heavy', () => {
  const { stroke } = markChanges(grid, 100, changed([1, 1], [2, 1]))!;
  expect([stroke.dash, stroke.weight]).toEqual(['dashed', 'cut']);
  // 1000 x 500.
  expect(lengthOf(stroke.lines)).toBe(3000);
});

test('markChanges puts one triangle to a group, at its highest panel', () => {
  const marks = markChanges(grid, 100, changed([1, 1], [1, 2], [2, 2], [4, 1]))!;
  const triangles = polylines(marks.triangles.lines);
  expect(triangles).toHaveLength(2);
  // The group of column 1 and 2 has its head at C1 R2: its panel is 500 wide and reaches from y 1500 to 2000.
  const [x, y] = triangles[0]![0]!;
  expect([x! > 0 && x! < 500, y! > 1500 && y! < 2000]).toEqual([true, true]);
  expect(markChanges(grid, 100, changed([1, 1], [2, 2]))!.triangles.lines.ends).toHaveLength(2);
});

test('markChanges of nothing that is shown is null', () => {
  expect(markChanges(grid, 100, changed())).toBeNull();
  const table = stageFixture({ columns: 4, rows: 3, jointDeg: 0 }).surfaces.surfaces[0]!;
  const part = layOutUnrolled(table, 'inside', [{ firstColumn: 3, columns: 2 }], { aboveMm: 0, belowMm: 0 });
  expect(markChanges(part, 100, changed([1, 1]))).toBeNull();
  expect(markChanges(part, 100, changed([3, 1]))).not.toBeNull();
});
