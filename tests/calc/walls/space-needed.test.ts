import { describe, expect, it } from 'vitest';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { spaceNeeded } from '../../../src/calc/walls/space-needed';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from './plain-wall';

const walls = (...made: ReturnType<typeof plainWall>[]) => layOutWalls(made, [plainPanel('p1')]).walls;

describe('spaceNeeded', () => {
  it('adds the walkway behind a flat wall only', () => {
    // 10 columns of 500; depth 80 and walkway 1200 behind.
    expect(spaceNeeded(walls(plainWall(10, 0)), 1200)).toEqual({ acrossMm: 5000, alongMm: 1280 });
  });

  it('adds it all round a ring', () => {
    // A square of 500 mm columns, turned so that its corners lie off the axes: 500 + 2 x 80 + 2 x 1200.
    const { acrossMm, alongMm } = spaceNeeded(
      walls(plainWall(4, 90, 1, { place: { xMm: 9, yMm: 3, turnDeg: 45 } })),
      1200,
    );
    expect(acrossMm).toBeCloseTo(3060, 6);
    expect(alongMm).toBeCloseTo(3060, 6);
  });

  it('moves both back corners of every column out, wherever the wall stands', () => {
    const place = { xMm: 7000, yMm: 4000, turnDeg: 0 };
    expect(spaceNeeded(walls(plainWall(1, 0, 1, { place })), 1200)).toEqual({ acrossMm: 500, alongMm: 1280 });
    expect(spaceNeeded(walls(plainWall(3, 0, 1, { place: { ...place, turnDeg: 90 } })), 1200).acrossMm).toBeCloseTo(
      1280,
      9,
    );
  });

  it('boxes all walls together', () => {
    const other = plainWall(10, 0, 1, { place: { xMm: 6000, yMm: 3000, turnDeg: 0 } });
    expect(spaceNeeded(walls(plainWall(10, 0), other), 0)).toEqual({ acrossMm: 11_000, alongMm: 3080 });
  });

  it('is nothing without walls', () => {
    expect(spaceNeeded([], 1200)).toEqual({ acrossMm: 0, alongMm: 0 });
  });
});
