import { describe, expect, it } from 'vitest';
import { checkCrossing } from '../../../src/calc/walls/check-crossing';
import { plainPanel } from '../panels/plain-panel';
import { judgeWall } from './judge-wall';
import { plainSegment, plainWall } from './plain-wall';

describe('checkCrossing', () => {
  it('passes a closed ring, concave or a drum of bevelled or unbevelled panels', () => {
    expect(checkCrossing(judgeWall(plainWall(144, 2.5)))[0]).toMatchObject({ severity: 'pass', measured: 0 });
    expect(checkCrossing(judgeWall(plainWall(36, -10)))[0]!.severity).toBe('pass');
    const bevelled = [plainPanel('p1', { size: { bevelled: true } })];
    expect(checkCrossing(judgeWall(plainWall(36, -10), bevelled))[0]!.severity).toBe('pass');
  });

  it('stops where columns stand in others, and names them', () => {
    const [check] = checkCrossing(judgeWall(plainWall(146, 2.5)));
    expect(check).toMatchObject({ id: 'walls.crossing.A', severity: 'stop', measured: 2, limit: 0 });
    expect(check!.where.map((place) => place.name)).toEqual(['A', 'A C145', 'A C146']);
  });

  it('takes the deepest of its panels: the inner turn of a spiral whose back reaches the outer', () => {
    const path = Array.from({ length: 40 }, (_, i) => plainSegment(`s${i}`, 1, 0, { jointBeforeDeg: 20 - i / 4 }));
    const bands = ['p1', 'p2'].map((panelId, i) => ({ id: `b${i}`, panelId, rows: 1, turnDeg: 0 as const }));
    const spiral = plainWall(1, 0, 1, { path, bands });
    const deep = plainPanel('p2', { size: { depthMm: 700 } });
    expect(checkCrossing(judgeWall(spiral, [plainPanel('p1'), plainPanel('p2')]))[0]!.severity).toBe('pass');
    expect(checkCrossing(judgeWall(spiral, [plainPanel('p1'), deep]))[0]!.severity).toBe('stop');
    const upsideDown = { ...spiral, bands: [...bands].reverse() };
    expect(checkCrossing(judgeWall(upsideDown, [plainPanel('p1'), deep]))[0]!.severity).toBe('stop');
  });

  it('names at most fifty places', () => {
    expect(checkCrossing(judgeWall(plainWall(400, 2.5)))[0]!.where).toHaveLength(50);
  });

  it('says so where it gave up', () => {
    const hair = [plainPanel('p1', { size: { widthMm: 0.001, depthMm: 1000 } })];
    expect(checkCrossing(judgeWall(plainWall(5000, 0), hair))[0]).toMatchObject({ severity: 'watch', measured: null });
  });
});
