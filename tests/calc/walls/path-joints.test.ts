import { describe, expect, it } from 'vitest';
import { pathJoints } from '../../../src/calc/walls/path-joints';
import { plainSegment } from './plain-wall';

describe('pathJoints', () => {
  it('gives n - 1 joints to a segment of n columns, and none before the first column', () => {
    expect([...pathJoints([plainSegment('a', 4, 2.5, { jointBeforeDeg: 9 })])]).toEqual([0, 2.5, 2.5, 2.5]);
  });

  it('joins segments by the joint before the later one', () => {
    const path = [plainSegment('a', 2, 5), plainSegment('b', 3, -5, { jointBeforeDeg: 1 })];
    expect([...pathJoints(path)]).toEqual([0, 5, 1, -5, -5]);
  });

  it('spreads the mixed joints evenly over the segment', () => {
    const path = [plainSegment('a', 6, 2.5, { mixed: { jointDeg: 5, count: 1 } })];
    expect([...pathJoints(path)]).toEqual([0, 2.5, 2.5, 5, 2.5, 2.5]);
  });

  it('takes as many mixed joints as there are where more are asked', () => {
    const path = [plainSegment('a', 3, 2.5, { mixed: { jointDeg: 5, count: 9 } })];
    expect([...pathJoints(path)]).toEqual([0, 5, 5]);
  });
});
