import { describe, expect, it } from 'vitest';
import { fillWallTable } from '../../../src/calc/walls/fill-wall-table';
import { pathJoints } from '../../../src/calc/walls/path-joints';
import { shapePath } from '../../../src/calc/walls/shape-path';
import { stackBands } from '../../../src/calc/walls/stack-bands';
import type { Wall } from '../../../src/plan/wall';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from './plain-wall';

const shapes = new Map([
  ['p1', plainPanel('p1')],
  ['coarse', plainPanel('coarse', { size: { heightMm: 1000 }, pixels: { wide: 100, high: 200 } })],
]);

function fill(wall: Wall) {
  const stack = stackBands(wall.bands, shapes);
  const { columnWidthMm, depthMm, unbevelledMm } = stack;
  return fillWallTable(
    wall,
    stack,
    shapePath({ jointDeg: pathJoints(wall.path), columnWidthMm, depthMm, unbevelledMm, ...wall.place }),
  );
}

describe('fillWallTable', () => {
  it('numbers panels by column from the left, then by row from the floor', () => {
    const table = fill(plainWall(3, 0, 2));
    expect([...table.column]).toEqual([1, 1, 2, 2, 3, 3]);
    expect([...table.row]).toEqual([1, 2, 1, 2, 1, 2]);
    expect([...table.at]).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it('puts the centre of each face in plan and above the floor, base included', () => {
    const table = fill(plainWall(2, 0, 2, { baseMm: 150 }));
    expect([...table.xMm]).toEqual([-250, -250, 250, 250]);
    expect([...table.yMm]).toEqual([0, 0, 0, 0]);
    expect([...table.zMm]).toEqual([400, 900, 400, 900]);
    expect([...table.headingDeg]).toEqual([0, 0, 0, 0]);
  });

  it('counts the canvas from the top left, rows of unlike panels one above the other', () => {
    const table = fill(
      plainWall(2, 0, 1, {
        bands: [
          { id: 'a', panelId: 'coarse', rows: 1, turnDeg: 0 },
          { id: 'b', panelId: 'p1', rows: 2, turnDeg: 0 },
        ],
      }),
    );
    expect(table.canvasWidth).toBe(400);
    expect(table.canvasHeight).toBe(600);
    expect([...table.canvasX]).toEqual([0, 0, 0, 200, 200, 200]);
    expect([...table.canvasY]).toEqual([400, 200, 0, 400, 200, 0]);
    expect([...table.type]).toEqual([0, 1, 1, 0, 1, 1]);
    expect([...table.zMm].slice(0, 3)).toEqual([500, 1250, 1750]);
  });

  it('leaves out holes once, however many lie over a place', () => {
    const hole = { id: 'h1', name: 'Door', segmentId: 's1', column: 2, row: 1, columns: 1, rows: 2 };
    const table = fill(plainWall(3, 0, 3, { holes: [hole, { ...hole, id: 'h2', row: 2, rows: 1 }] }));
    expect(table.count).toBe(7);
    expect([...table.at]).toEqual([0, 1, 2, -1, -1, 3, 4, 5, 6]);
    expect(table.row[3]).toBe(3);
  });
});
