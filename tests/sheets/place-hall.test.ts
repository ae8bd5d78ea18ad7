import { describe, expect, it } from 'vitest';
import { boxRoundWalls, placeHall } from '../../src/sheets/place-hall';
import { stageFixture } from '../arbitraries/evaluation-fixture';

/** A wall whose back edges lie in a rectangle of 20 by 10 m about (1 m, 2 m). */
const wall = {
  ...stageFixture({ columns: 1, rows: 1, jointDeg: 0 }).walls[0]!,
  box: { leftMm: -9000, rightMm: 11_000, frontMm: -3000, backMm: 7000 },
};
const hall = { lengthMm: 30_000, widthMm: 15_000, clearHeightMm: null, walkwayMm: 1000 };

describe('placeHall', () => {
  it('lays its length across, about the middle of the walls', () => {
    expect(placeHall(hall, [wall])).toEqual({ leftMm: -14_000, rightMm: 16_000, lowMm: -5500, highMm: 9500 });
  });
  it('turns it where only so the walls and the walkway have room', () => {
    // 15 m across do not hold 20 m and twice 1 m.
    expect(placeHall({ ...hall, lengthMm: 15_000, widthMm: 30_000 }, [wall])).toEqual({
      leftMm: -14_000,
      rightMm: 16_000,
      lowMm: -5500,
      highMm: 9500,
    });
  });
  it('is null where a side is not stated, and about the origin without walls', () => {
    expect(placeHall({ ...hall, lengthMm: null }, [wall])).toBeNull();
    expect(placeHall({ ...hall, widthMm: null }, [wall])).toBeNull();
    expect(placeHall(hall, [])).toEqual({ leftMm: -15_000, rightMm: 15_000, lowMm: -7500, highMm: 7500 });
  });
});

describe('boxRoundWalls', () => {
  it('holds all walls', () => {
    const other = { ...wall, box: { leftMm: 0, rightMm: 12_000, frontMm: -9000, backMm: 0 } };
    expect(boxRoundWalls([wall, other])).toEqual({ leftMm: -9000, rightMm: 12_000, lowMm: -9000, highMm: 7000 });
    expect(boxRoundWalls([])).toBeNull();
  });
});
