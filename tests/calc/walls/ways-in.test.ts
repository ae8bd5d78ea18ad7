import { describe, expect, it } from 'vitest';
import { waysIn } from '../../../src/calc/walls/ways-in';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const door = { id: 'd', name: 'Door', segmentId: 's1', column: 20, row: 1, columns: 8, rows: 9 };

describe('waysIn', () => {
  it('is the opening of a ring, with nothing over it', () => {
    const [way, ...others] = waysIn(judgeWall(plainWall(136, 2.5, 13)));
    // Chord over eight columns left out: 2 x 11460.065 sin 10 degrees = 3980.06.
    expect(way).toMatchObject({ kind: 'opening', heightMm: null, field: null });
    expect(way!.widthMm).toBeCloseTo(3980.06, 1);
    expect(others).toEqual([]);
  });

  it('is every hole down to the floor: as wide as its chord, as high as its rows', () => {
    const ways = waysIn(judgeWall(plainWall(136, 2.5, 13, { holes: [door] })));
    expect(ways[1]).toMatchObject({ kind: 'door', heightMm: 4500, field: 'walls[0].holes[0]' });
    expect(ways[1]!.widthMm).toBeCloseTo(3980.06, 1);
  });

  it('is open above where the hole reaches the top row', () => {
    expect(waysIn(judgeWall(plainWall(136, 2.5, 13, { holes: [{ ...door, rows: 13 }] })))[1]!.heightMm).toBeNull();
  });

  it('is no hole above the floor, none on a wall that stands off the floor, and none beyond the wall', () => {
    expect(waysIn(judgeWall(plainWall(20, 0, 13, { holes: [{ ...door, column: 2, row: 2 }] })))).toEqual([]);
    expect(waysIn(judgeWall(plainWall(20, 0, 13, { baseMm: 100, holes: [{ ...door, column: 2 }] })))).toEqual([]);
    expect(waysIn(judgeWall(plainWall(20, 0, 13, { holes: [{ ...door, column: 60 }] })))).toEqual([]);
  });
});
