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
  // 1000 x 500, drawn 0.07 x 500 = 35 mm inside.
  expect(lengthOf(stroke.lines)).toBeCloseTo(2 * (1000 - 70) + 2 * (500 - 70), 6);
});

test('markChanges leads an outline round an inner corner without a gap, seen from behind too', () => {
  for (const from of ['inside', 'behind'] as const) {
    const seen = flatGrid({ columns: 4, rows: 3 }, from);
    const { stroke } = markChanges(seen, 100, changed([1, 1], [2, 1], [1, 2]))!;
    // Three panels in an angle have an outline of 4000; five outer corners and one inner one: 8 x 35 less.
    expect(lengthOf(stroke.lines)).toBeCloseTo(4000 - 8 * 35, 6);
    const ends = polylines(stroke.lines).flatMap((line) => [line[0]!, line.at(-1)!].map((point) => point.join()));
    // Every end meets another one.
    for (const end of ends) expect(ends.filter((other) => other === end)).toHaveLength(2);
  }
});

test('markChanges puts one triangle to a group, at its highest panel', () => {
  const marks = markChanges(grid, 100, changed([1, 1], [1, 2], [2, 2], [4, 1]))!;
  const triangles = polylines(marks.triangles.lines);
  // An outer and an inner one each.
  expect(triangles).toHaveLength(4);
  // The group of column 1 and 2 has its head at C1 R2: its panel is 500 wide and reaches from y 1500 to 2000.
  const [x, y] = triangles[0]![0]!;
  expect([x! > 0 && x! < 500, y! > 1500 && y! < 2000]).toEqual([true, true]);
  expect(markChanges(grid, 100, changed([1, 1], [2, 2]))!.triangles.lines.ends).toHaveLength(4);
});

test('markChanges of nothing that is shown is null', () => {
  expect(markChanges(grid, 100, changed())).toBeNull();
  const table = stageFixture({ columns: 4, rows: 3, jointDeg: 0 }).surfaces.surfaces[0]!;
  const part = layOutUnrolled(table, 'inside', [{ firstColumn: 3, columns: 2 }], { aboveMm: 0, belowMm: 0 });
  expect(markChanges(part, 100, changed([1, 1]))).toBeNull();
  expect(markChanges(part, 100, changed([3, 1]))).not.toBeNull();
});
