import { expect, test } from 'vitest';
import { elevationView } from '../../src/sheets/elevation-view';
import { drawElevationWalls, rowEdgesMm } from '../../src/sheets/elevation-walls';
import { wallOf } from '../arbitraries/wall-fixture';
import { lengthOf, polylines } from './polylines';

const drawn = (options: Parameters<typeof wallOf>[0], side: 'front' | 'back' = 'front') => {
  const wall = wallOf(options);
  const [grid, edge] = drawElevationWalls([wall], elevationView([wall], side));
  return { grid: grid!.lines, edge: edge!.lines };
};

test('drawElevationWalls gives a flat wall its outline and a hairline between panels', () => {
  const { grid, edge } = drawn({ columns: 4, rows: 3, jointDeg: 0, baseMm: 200 });
  // 2000 wide and 1500 high; 2 level lines of 2000, 3 upright ones of 1500.
  expect(lengthOf(edge)).toBe(2 * 2000 + 2 * 1500);
  expect(lengthOf(grid)).toBe(2 * 2000 + 3 * 1500);
  const heights = polylines(edge)
    .flat()
    .map(([, y]) => y!);
  expect([Math.max(...heights), Math.min(...heights)]).toEqual([-200, -1700]);
});

test('drawElevationWalls draws round a hole', () => {
  const { grid, edge } = drawn({ columns: 4, rows: 3, jointDeg: 0, hole: { column: 2, row: 1, columns: 2, rows: 2 } });
  // A door of 1000 x 1000: its foot is open (1000 less), two sides and a lintel more.
  expect(lengthOf(edge)).toBe(2 * 2000 + 2 * 1500 - 1000 + 3 * 1000);
  // Level lines lose 1000 at row 1 | 2 and at 2 | 3 (now an edge); upright ones lose 1000 each at the sides and the middle.
  expect(lengthOf(grid)).toBe(2 * 2000 + 3 * 1500 - 2 * 1000 - 3 * 1000);
});

test('drawElevationWalls joins the columns of a curve without a second line', () => {
  const { grid } = drawn({ columns: 8, rows: 1, jointDeg: 5 });
  // Seven joints, each one upright line of 500.
  expect(polylines(grid)).toHaveLength(7);
});

test('rowEdgesMm are heights above the floor', () => {
  expect([...rowEdgesMm(wallOf({ columns: 1, rows: 2, jointDeg: 0, baseMm: 300 }))]).toEqual([300, 800, 1300]);
});
