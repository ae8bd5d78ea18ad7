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

  it('prints lines that hold for a ring that is turned and stands off the middle of the plan', () => {
    expectStepsHold(work(plainWall(136, 2.5, 1, { place: { xMm: 1234, yMm: -567, turnDeg: 33 } })));
    expectStepsHold(work(plainWall(9, -5)));
  });

  it('works out how far the columns lie off their circle, and how far corners stand beyond flats', () => {
    // Source: fixtures/reference/geometry.json, 500 mm at 2.5 degrees: radius over corners less radius over flats.
    const even = work(plainWall(136, 2.5));
    const symbol = (steps: typeof even, name: string) => steps.find((step) => step.symbol === name);
    expect(symbol(even, 'sagitta')!.value).toBeCloseTo(11460.064978748562 - 11457.337793621136, 6);
    expect(symbol(even, 'off')!.value).toBeCloseTo(0, 6);
    const wall = plainWall(1, 0, 1, {
      path: [plainSegment('a', 40, 2.5), plainSegment('b', 30, 5, { jointBeforeDeg: 5 })],
    });
    const mixed = work(wall);
    expectStepsHold(mixed);
    expect(symbol(mixed, 'off')!.value).toBe(judgeWall(wall).result.bestFit!.worstMm);
    expect(symbol(mixed, 'off')!.value).toBeGreaterThan(10);
    expect(symbol(mixed, 'sagitta')).toBeUndefined();
  });

  it('takes the polygon only for concave joints', () => {
    expect(work(plainWall(9, -5)).map((step) => step.symbol)).toEqual(['turn', 'off', 'seam']);
  });

  it('gives a closed ring its opening by walking only, since there is no chord to speak of', () => {
    const figures = work(plainWall(144, 2.5)).map((step) => step.figure);
    expect(figures).toContain('opening of A');
    expect(figures).not.toContain('opening of A, as a chord');
  });
});
