import { describe, expect, it } from 'vitest';
import { boxRound } from '../../../src/calc/walls/box-round';

describe('boxRound', () => {
  it('takes the least and greatest of x and of y over all lists', () => {
    expect(boxRound([Float64Array.of(1, 5, -2, 3), Float64Array.of(0, 9)])).toEqual({
      leftMm: -2,
      rightMm: 1,
      frontMm: 3,
      backMm: 9,
    });
  });

  it('gives zeros for no corners', () => {
    expect(boxRound([new Float64Array(0)])).toEqual({ leftMm: 0, rightMm: 0, frontMm: 0, backMm: 0 });
  });
});
