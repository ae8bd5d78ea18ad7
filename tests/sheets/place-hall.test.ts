import { describe, expect, it } from 'vitest';
import { spaceNeeded } from '../../src/calc/walls/space-needed';
import { boxRoundWalls, placeHall } from '../../src/sheets/place-hall';
import { stageFixture } from '../arbitraries/evaluation-fixture';

/** 10 m of flat wall about the origin, 90 mm deep, its back at greater y. */
const flat = stageFixture({ columns: 20, rows: 1, jointDeg: 0 }).walls;
const hall = { lengthMm: 30_000, widthMm: 8_000, clearHeightMm: null, walkwayMm: 1000 };

describe('boxRoundWalls', () => {
  it('holds the walls and the walkway behind them', () => {
    expect(boxRoundWalls(flat, 1000)).toEqual({ leftMm: -5000, rightMm: 5000, lowMm: 0, highMm: 1090 });
    expect(boxRoundWalls([], 1000)).toBeNull();
  });
  it('is as large as what the check of the hall asks for', () => {
    for (const jointDeg of [0, 2.5, 5]) {
      const { walls } = stageFixture({ columns: 60, rows: 1, jointDeg });
      const box = boxRoundWalls(walls, 1300)!;
      const needed = spaceNeeded(walls, 1300);
      expect(box.rightMm - box.leftMm).toBeCloseTo(needed.acrossMm, 6);
      expect(box.highMm - box.lowMm).toBeCloseTo(needed.alongMm, 6);
    }
  });
});

describe('placeHall', () => {
  it('stands about the middle of what the walls need', () => {
    expect(placeHall(hall, flat)).toEqual({ leftMm: -15_000, rightMm: 15_000, lowMm: -3455, highMm: 4545 });
  });
  it('turns to whichever way round leaves most', () => {
    // 8 m across do not hold 10 m of wall, 30 m do.
    expect(placeHall({ ...hall, lengthMm: 8_000, widthMm: 30_000 }, flat)).toEqual(placeHall(hall, flat));
  });
  it('is null where a side is not stated, and about the origin without walls', () => {
    expect(placeHall({ ...hall, lengthMm: null }, flat)).toBeNull();
    expect(placeHall({ ...hall, widthMm: null }, flat)).toBeNull();
    expect(placeHall(hall, [])).toEqual({ leftMm: -15_000, rightMm: 15_000, lowMm: -4000, highMm: 4000 });
  });
});
