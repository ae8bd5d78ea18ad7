import { describe, expect, it } from 'vitest';
import { checkHoles } from '../../../src/calc/walls/check-holes';
import type { Wall, WallHole } from '../../../src/plan/wall';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const hole = (id: string, more: Partial<WallHole>): WallHole => ({
  id,
  name: id,
  segmentId: 's1',
  column: 2,
  row: 1,
  columns: 2,
  rows: 6,
  ...more,
});
const check = (holes: WallHole[], more: Partial<Wall> = {}) =>
  checkHoles(judgeWall(plainWall(10, 0, 6, { holes, ...more })));

describe('checkHoles', () => {
  it('has nothing to say of a hole through all rows that lies on the wall', () => {
    expect(check([hole('gap', {})])).toEqual([]);
  });

  it('watches holes beyond the wall, cuts them to it and drops those that are all outside', () => {
    const [found] = check([
      hole('wide', { column: 9, columns: 5 }),
      hole('gone', { segmentId: 'lost' }),
      hole('fits', {}),
      hole('high', { row: 1, rows: 9 }),
    ]);
    expect(found).toMatchObject({ id: 'walls.hole-outside.A', severity: 'watch', measured: 3 });
    expect(found!.where.slice(1).map((place) => place.name)).toEqual([
      'walls[0].holes[0]',
      'walls[0].holes[1]',
      'walls[0].holes[3]',
    ]);
    expect(found!.fix!.command.args).toMatchObject({
      fields: [
        {
          path: ['walls', 0, 'holes'],
          value: [hole('wide', { column: 9, columns: 2 }), hole('fits', {}), hole('high', { row: 1, rows: 6 })],
        },
      ],
    });
  });

  it('points at panels that a door of a standing wall leaves with nothing below', () => {
    expect(check([hole('door', { rows: 4 })])).toMatchObject([
      { id: 'walls.hole-support.A', severity: 'watch', measured: 1 },
    ]);
    expect(check([hole('notch', { row: 4, rows: 3 })])).toEqual([]);
  });

  it('points at panels that a hole of a hanging wall leaves with nothing above', () => {
    expect(check([hole('window', { row: 3, rows: 4 })], { support: 'hangs' })).toMatchObject([
      { id: 'walls.hole-support.A', severity: 'watch' },
    ]);
    expect(check([hole('door', { rows: 4 })], { support: 'hangs' })).toEqual([]);
  });
});
