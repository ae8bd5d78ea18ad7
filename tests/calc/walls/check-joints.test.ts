import { describe, expect, it } from 'vitest';
import { checkJoints } from '../../../src/calc/walls/check-joints';
import { plainPanel } from '../panels/plain-panel';
import { judgeWall } from './judge-wall';
import { plainSegment, plainWall } from './plain-wall';

const path = (...segments: ReturnType<typeof plainSegment>[]) => plainWall(1, 0, 1, { path: segments });

describe('checkJoints', () => {
  it('passes joints of the list, mixed ones and those between segments too', () => {
    const wall = path(
      plainSegment('a', 5, 2.5, { mixed: { jointDeg: 5, count: 2 } }),
      plainSegment('b', 5, 0, { jointBeforeDeg: -5 }),
    );
    expect(checkJoints(judgeWall(wall))).toMatchObject([{ id: 'walls.joints.A', severity: 'pass', measured: 5 }]);
  });

  it('stops at the joint farthest from the list, names all and takes the nearest steps', () => {
    const wall = path(
      plainSegment('a', 5, 2.4, { mixed: { jointDeg: 7, count: 2 } }),
      plainSegment('b', 5, 5, { jointBeforeDeg: -3 }),
    );
    const [check] = checkJoints(judgeWall(wall));
    // 2.4 is 0.1 from 2.5, 7 is 2 from 5, -3 is 0.5 from -2.5.
    expect(check).toMatchObject({ severity: 'stop', measured: 7, limit: 5, unit: 'deg' });
    expect(check!.where.map((place) => place.name)).toEqual([
      'A',
      'walls[0].path[0].jointDeg',
      'walls[0].path[0].mixed.jointDeg',
      'walls[0].path[1].jointBeforeDeg',
    ]);
    expect(check!.fix!.command).toEqual({
      name: 'set-fields',
      args: {
        label: 'joints of wall A',
        fields: [
          { path: ['walls', 0, 'path', 0, 'jointDeg'], value: 2.5 },
          { path: ['walls', 0, 'path', 0, 'mixed', 'jointDeg'], value: 5 },
          { path: ['walls', 0, 'path', 1, 'jointBeforeDeg'], value: -2.5 },
        ],
      },
    });
  });

  it('looks only at joints that the wall has', () => {
    // One column has no joint of its own; the first segment has none before it; a segment all mixed has none of its first.
    expect(checkJoints(judgeWall(path(plainSegment('a', 1, 33, { jointBeforeDeg: 44 }))))[0]!.severity).toBe('pass');
    const all = plainSegment('a', 3, 33, { mixed: { jointDeg: 5, count: 2 } });
    expect(checkJoints(judgeWall(path(all)))[0]!.severity).toBe('pass');
  });

  it('holds a wall of two panels to what both locks take', () => {
    const panels = [plainPanel('p1'), plainPanel('p2', { lock: { stepsDeg: [0, 5] } })];
    const bands = ['p1', 'p2'].map((panelId, i) => ({ id: `b${i}`, panelId, rows: 1, turnDeg: 0 as const }));
    const wall = plainWall(5, 2.5, 1, { bands });
    expect(checkJoints(judgeWall(wall, panels))[0]).toMatchObject({ severity: 'stop', measured: 2.5, limit: 0 });
  });

  it('reads a lock without a list as not stated, and locks without a joint in common as a stop without a fix', () => {
    const unstated = [plainPanel('p1', { lock: { stepsDeg: [] } })];
    expect(checkJoints(judgeWall(plainWall(5, 2.5), unstated))[0]).toMatchObject({ severity: 'offer', limit: null });
    const apart = [plainPanel('p1', { lock: { stepsDeg: [1] } }), plainPanel('p2', { lock: { stepsDeg: [2] } })];
    const bands = ['p1', 'p2'].map((panelId, i) => ({ id: `b${i}`, panelId, rows: 1, turnDeg: 0 as const }));
    const [check] = checkJoints(judgeWall(plainWall(5, 1, 1, { bands }), apart));
    expect(check).toMatchObject({ severity: 'stop', limit: null });
    expect(check!.fix).toBeUndefined();
  });
});
