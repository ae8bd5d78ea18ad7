import { describe, expect, it } from 'vitest';
import { hallFit } from '../../../src/calc/walls/hall-fit';

describe('hallFit', () => {
  it('turns the walls whichever way round leaves most', () => {
    expect(hallFit({ acrossMm: 20_000, alongMm: 28_000 }, 30_000, 22_000)).toEqual({
      spareMm: 2000,
      neededMm: 28_000,
      hallMm: 30_000,
      fits: true,
      turned: true,
    });
    expect(hallFit({ acrossMm: 28_000, alongMm: 21_000 }, 30_000, 22_000)).toMatchObject({
      spareMm: 1000,
      neededMm: 21_000,
      turned: false,
    });
  });

  it('does not fit where one side is too long either way round', () => {
    expect(hallFit({ acrossMm: 24_000, alongMm: 24_000 }, 30_000, 22_000)).toEqual({
      spareMm: -2000,
      neededMm: 24_000,
      hallMm: 22_000,
      fits: false,
      turned: false,
    });
  });

  it('fits to the hair', () => {
    expect(hallFit({ acrossMm: 30_000.0000001, alongMm: 22_000 }, 30_000, 22_000).fits).toBe(true);
    expect(hallFit({ acrossMm: 30_000.01, alongMm: 22_000 }, 30_000, 22_000).fits).toBe(false);
  });
});
