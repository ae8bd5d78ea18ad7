import { describe, expect, it } from 'vitest';
import { panelFromAbove } from '../../src/sheets/panel-from-above';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const parts = stageFixture({
  columns: 136,
  rows: 4,
  jointDeg: 2.5,
  ceilingDiameterMm: 6000,
  hole: { column: 10, row: 1, columns: 1, rows: 2 },
});
const wall = parts.surfaces.surfaces[0]!;
const ceiling = parts.surfaces.surfaces[1]!;

describe('panelFromAbove', () => {
  it('takes the panel of the wall column under the point, in the wished row', () => {
    for (const local of [0, 1, 260, wall.count - 1]) {
      expect(panelFromAbove(parts, wall.xMm[local]!, wall.yMm[local]!, wall.row[local]!)).toBe(local);
    }
  });
  it('takes the lowest panel where the column has none in that row', () => {
    const found = panelFromAbove(parts, wall.xMm[9 * 4]!, wall.yMm[9 * 4]!, 1);
    expect([wall.column[found], wall.row[found]]).toEqual([10, 3]);
    const beyond = panelFromAbove(parts, wall.xMm[0]!, wall.yMm[0]!, 99);
    expect([wall.column[beyond], wall.row[beyond]]).toEqual([1, 1]);
  });
  it('takes a panel of the ceiling, numbered behind those of the wall', () => {
    expect(panelFromAbove(parts, ceiling.xMm[30]!, ceiling.yMm[30]!, 1)).toBe(wall.count + 30);
  });
  it('takes nothing where nothing is, and a wall that is nearly hit', () => {
    expect(panelFromAbove(parts, 9000, 0, 1)).toBe(-1);
    const [x, y] = [wall.xMm[0]!, wall.yMm[0]!];
    const inward = 1 - 200 / Math.hypot(x, y);
    expect(panelFromAbove(parts, x * inward, y * inward, 1)).toBe(0);
  });
});
