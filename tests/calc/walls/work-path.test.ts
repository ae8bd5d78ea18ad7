import { describe, expect, it } from 'vitest';
import { workPath } from '../../../src/calc/walls/work-path';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { judgeWall } from './judge-wall';
import { plainSegment, plainWall } from './plain-wall';

const work = (wall: ReturnType<typeof plainWall>) => workPath(wall, judgeWall(wall).result);

describe('workPath', () => {
  it('counts the joints of each angle', () => {
    const steps = work(plainWall(1, 0, 1, { path: [plainSegment('a', 6, 2.5, { mixed: { jointDeg: 5, count: 2 } })] }));
    expectStepsHold(steps);
    expect(steps[0]).toMatchObject({
      value: 3 * 2.5 + 2 * 5,
      numbers: { count1: 3, joint1: 2.5, count2: 2, joint2: 5 },
    });
  });

  it('turns by nought where there is one column', () => {
    expect(work(plainWall(1, 0))).toMatchObject([{ symbol: 'turn', expression: '0', value: 0 }]);
  });

  it('gives a closed ring its opening by walking only, since there is no chord to speak of', () => {
    const figures = work(plainWall(144, 2.5)).map((step) => step.figure);
    expect(figures).toContain('opening of A');
    expect(figures).not.toContain('opening of A, as a chord');
  });
});
