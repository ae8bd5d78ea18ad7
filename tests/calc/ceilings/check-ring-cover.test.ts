import { describe, expect, it } from 'vitest';
import { checkRingCover } from '../../../src/calc/ceilings/check-ring-cover';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Wall } from '../../../src/plan/wall';
import { plainWall } from '../walls/plain-wall';
import { judgeCeiling, panels } from './judge-ceiling';
import { plainCeiling } from './plain-ceiling';

const check = (wall: Wall, place = plainCeiling().place) =>
  checkRingCover(judgeCeiling(plainCeiling({ place }), [wall]), layOutWalls([wall], panels).walls);

describe('checkRingCover', () => {
  it('points at the exits of a nearly closed ring under a ceiling', () => {
    const [found] = check(plainWall(68, 5));
    expect(found).toMatchObject({ id: 'ceilings.escape.B', severity: 'watch', limit: null, unit: 'mm' });
    // Four columns out of 72: 2 x 5731.396 sin 10 degrees = 1990.5.
    expect(found!.measured).toBeCloseTo(1990.5, 1);
    expect(found!.sentence).toMatch(/exits.*fire authority/);
  });

  it('says nothing of an open horseshoe, or of a ceiling beside the ring', () => {
    expect(check(plainWall(50, 5))).toEqual([]);
    expect(check(plainWall(10, 0))).toEqual([]);
    expect(check(plainWall(68, 5), { ...plainCeiling().place, xMm: 20_000 })).toEqual([]);
  });
});
