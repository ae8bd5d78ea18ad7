import { describe, expect, it } from 'vitest';
import { checkMixedJoints } from '../../../src/calc/walls/check-mixed-joints';
import { judgeWall } from './judge-wall';
import { plainSegment, plainWall } from './plain-wall';

const check = (...segments: ReturnType<typeof plainSegment>[]) =>
  checkMixedJoints(judgeWall(plainWall(1, 0, 1, { path: segments })));

describe('checkMixedJoints', () => {
  it('has nothing to say where as many joints are mixed in as there are, or fewer', () => {
    expect(check(plainSegment('a', 5, 2.5), plainSegment('b', 5, 2.5, { mixed: { jointDeg: 5, count: 4 } }))).toEqual(
      [],
    );
  });

  it('watches more, and mixes in as many as there are, or none', () => {
    const [found] = check(
      plainSegment('b', 1, 2.5, { mixed: { jointDeg: 5, count: 1 } }),
      plainSegment('a', 5, 2.5, { mixed: { jointDeg: 5, count: 6 } }),
      plainSegment('c', 20, 2.5, { mixed: { jointDeg: 5, count: 20 } }),
    );
    expect(found).toMatchObject({ id: 'walls.mixed-joints.A', severity: 'watch', measured: 6, limit: 4 });
    expect(found!.fix!.command.args).toMatchObject({
      fields: [
        { path: ['walls', 0, 'path', 0, 'mixed'], value: null },
        { path: ['walls', 0, 'path', 1, 'mixed'], value: { jointDeg: 5, count: 4 } },
        { path: ['walls', 0, 'path', 2, 'mixed'], value: { jointDeg: 5, count: 19 } },
      ],
    });
  });
});
