import { describe, expect, it } from 'vitest';
import { solveThree } from '../../../src/calc/walls/solve-three';

describe('solveThree', () => {
  it('solves a system that needs its rows exchanged', () => {
    // x = 1, y = 2, z = 3 put into each line by hand.
    const solved = solveThree([
      [0, 1, 1, 5],
      [2, 0, 1, 5],
      [1, 1, 1, 6],
    ]);
    expect(solved![0]).toBeCloseTo(1, 12);
    expect(solved![1]).toBeCloseTo(2, 12);
    expect(solved![2]).toBeCloseTo(3, 12);
  });

  it('gives null for a singular system', () => {
    expect(
      solveThree([
        [1, 2, 3, 1],
        [2, 4, 6, 2],
        [0, 0, 1, 1],
      ]),
    ).toBeNull();
    expect(
      solveThree([
        [Number.NaN, 0, 0, 1],
        [0, 1, 0, 1],
        [0, 0, 1, 1],
      ]),
    ).toBeNull();
  });
});
