import { describe, expect, it } from 'vitest';
import { checkWallGap } from '../../../src/calc/ceilings/check-wall-gap';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import type { Wall } from '../../../src/plan/wall';
import { plainWall } from '../walls/plain-wall';
import { judgeCeiling, panels, shapes } from './judge-ceiling';
import { plainCeiling } from './plain-ceiling';

const flat = (yMm: number, more: Partial<Wall> = {}) =>
  plainWall(6, 0, 10, { place: { xMm: 0, yMm, turnDeg: 0 }, ...more });
const check = (more: Partial<Ceiling>, ...walls: Wall[]) =>
  checkWallGap(judgeCeiling(plainCeiling(more), walls), shapes, layOutWalls(walls, panels).walls);

describe('checkWallGap', () => {
  it('passes the usual gap and watches a narrower one', () => {
    // The ceiling's far edge is at y = 750; the wall stands 5 m high, the ceiling travels from 4 m.
    expect(check({}, flat(950))).toMatchObject([{ id: 'ceilings.gap.B.A', severity: 'pass', limit: 150 }]);
    const [narrow] = check({}, flat(850));
    expect(narrow).toMatchObject({ severity: 'watch', measured: 100 });
    expect(narrow!.fix).toBeDefined();
  });

  it('stops where the ceiling runs into the wall', () => {
    expect(check({}, flat(750))[0]).toMatchObject({ severity: 'stop', measured: 0 });
    expect(check({}, flat(300))[0]).toMatchObject({ severity: 'stop', measured: 0 });
  });

  it('asks for no gap to a wall that is all below or above the travel, by what is deeper than the face', () => {
    // Ten rows of 500: the top at 5000. Panels are 80 deep.
    const above = { height: { trimMm: 6000, lowestMm: 5000, highestMm: 7000 } };
    expect(check(above, flat(300))).toEqual([]);
    expect(check({ height: { ...above.height, lowestMm: 4999 } }, flat(300))).toHaveLength(1);
    const high = flat(300, { baseMm: 7080 });
    expect(check({}, high)).toEqual([]);
    expect(check({}, { ...high, baseMm: 7079 })).toHaveLength(1);
  });

  it('asks nothing of a flat wall that is far off', () => {
    expect(check({}, flat(2000))).toEqual([]);
  });

  it('offers a look at a gap to a ring that opens wider than usual', () => {
    const ring = plainWall(72, 5, 10);
    const disc = { outline: { kind: 'circle' as const, diameterMm: 10_900 } };
    const found = check(disc, ring);
    expect(found.map((one) => [one.id, one.severity])).toEqual([
      ['ceilings.gap.B.A', 'pass'],
      ['ceilings.gap-width.B.A', 'offer'],
    ]);
    expect(found[1]).toMatchObject({ limit: 300 });
  });
});
