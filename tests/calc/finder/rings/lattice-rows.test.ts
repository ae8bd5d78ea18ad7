import { describe, expect, it } from 'vitest';
import { latticeRows } from '../../../../src/calc/finder/rings/lattice-rows';

describe('latticeRows', () => {
  it('rounds a height to whole rows both ways for each height of row', () => {
    expect(latticeRows(6400, [500, 1000])).toEqual([
      { rowHeightMm: 500, down: { count: 12, lengthMm: 6000 }, up: { count: 13, lengthMm: 6500 } },
      { rowHeightMm: 1000, down: { count: 6, lengthMm: 6000 }, up: { count: 7, lengthMm: 7000 } },
    ]);
  });

  it('lists a square panel once', () => {
    expect(latticeRows(6000, [500, 500])).toHaveLength(1);
  });
});
