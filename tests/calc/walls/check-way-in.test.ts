import { describe, expect, it } from 'vitest';
import { checkWayIn } from '../../../src/calc/walls/check-way-in';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const ring = (more = {}) => judgeWall(plainWall(136, 2.5, 13, more));
const door = { id: 'd', name: 'Door', segmentId: 's1', column: 60, row: 1, columns: 12, rows: 6 };

describe('checkWayIn', () => {
  it('passes an opening as wide as what must drive in', () => {
    expect(checkWayIn(ring(), { widthMm: 3900, heightMm: 4000 })).toMatchObject([
      { id: 'walls.way-in-width.A', severity: 'pass', limit: 3900 },
    ]);
  });

  it('stops a narrower one, and leaves out columns until it is wide enough', () => {
    const [check] = checkWayIn(ring(), { widthMm: 4200, heightMm: null });
    expect(check).toMatchObject({ severity: 'stop', limit: 4200 });
    // Nine columns out: 2 x 11460.065 sin 11.25 degrees = 4471.5.
    expect(check!.fix!.command.args).toMatchObject({
      fields: [{ path: ['walls', 0, 'path', 0, 'columns'], value: 135 }],
    });
  });

  it('takes a door that lets it through rather than a narrow opening, and holds its height', () => {
    const closed = (rows: number) => judgeWall(plainWall(144, 2.5, 13, { holes: [{ ...door, rows }] }));
    expect(checkWayIn(closed(9), { widthMm: 4000, heightMm: 4500 })).toMatchObject([
      { id: 'walls.way-in-width.A', severity: 'pass' },
      { id: 'walls.way-in-height.A', severity: 'pass', measured: 4500, limit: 4500 },
    ]);
    expect(checkWayIn(closed(8), { widthMm: 4000, heightMm: 4200 })).toMatchObject([
      { severity: 'pass' },
      { id: 'walls.way-in-height.A', severity: 'stop', measured: 4000 },
    ]);
    expect(checkWayIn(closed(8), { widthMm: 4000, heightMm: null })[1]).toMatchObject({
      severity: 'offer',
      limit: null,
    });
  });

  it('stops a closed ring without a door', () => {
    expect(checkWayIn(judgeWall(plainWall(144, 2.5)), { widthMm: 2500, heightMm: null })[0]).toMatchObject({
      severity: 'stop',
    });
  });

  it('reads a vehicle of no stated width as not stated', () => {
    expect(checkWayIn(ring(), { widthMm: null, heightMm: null })).toMatchObject([{ severity: 'offer', limit: null }]);
  });

  it('asks nothing of a flat wall, a shallow arc or a drum, round which one drives', () => {
    for (const wall of [plainWall(20, 0), plainWall(20, 2.5), plainWall(36, -10)]) {
      expect(checkWayIn(judgeWall(wall), { widthMm: 4000, heightMm: 4000 })).toEqual([]);
    }
  });

  it('has no fix where the ring would no longer turn by half', () => {
    const [check] = checkWayIn(ring(), { widthMm: 60_000, heightMm: null });
    expect(check!.severity).toBe('stop');
    expect(check!.fix).toBeUndefined();
  });
});
