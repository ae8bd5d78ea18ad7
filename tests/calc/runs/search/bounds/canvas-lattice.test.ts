import { expect, test } from 'vitest';
import { canvasLattice } from '../../../../../src/calc/runs/search/bounds/canvas-lattice';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';

const of = (grid: ReturnType<typeof block>, places = [...grid.present.keys()]) =>
  canvasLattice(regionOf(grid, aPort(4, 'rectangle'), Int32Array.from(places)));

test('canvasLattice gives the edges of columns and rows, from those with panels on', () => {
  // Places 7, 8, 10 and 11 of three columns by... four columns of three rows: columns 2 and 3, rows 1 and 2.
  const lattice = of(block(4, 3), [7, 8, 10, 11])!;
  expect(lattice).toMatchObject({ columnFirst: 2, rowFirst: 1 });
  expect([...lattice.left, ...lattice.right]).toEqual([432, 648, 648, 864]);
  // Rows count up, the canvas down.
  expect([...lattice.top, ...lattice.bottom]).toEqual([216, 0, 432, 216]);
});

test('canvasLattice is null where a panel of a column is wider than the others', () => {
  const grid = block(2, 2);
  grid.pixelWidth[1] = 108;
  expect(of(grid)).toBeNull();
});

test('canvasLattice is null where columns do not rise on the canvas, and without panels', () => {
  const grid = block(2, 1);
  grid.pixelLeft[0] = 500;
  expect(of(grid)).toBeNull();
  expect(of(block(2, 1), [])).toBeNull();
});
