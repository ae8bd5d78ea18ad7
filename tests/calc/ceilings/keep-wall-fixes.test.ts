import { describe, expect, it } from 'vitest';
import { checkCeilings } from '../../../src/calc/ceilings/check-ceilings';
import { keepWallFixes } from '../../../src/calc/ceilings/keep-wall-fixes';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { checkWalls } from '../../../src/calc/walls/check-walls';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import { defaultWish } from '../../../src/plan/wish';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from '../walls/plain-wall';
import { plainCeiling } from './plain-ceiling';

const { hall, vehicle, wall: wished } = defaultWish;
const shapes = [{ ...plainPanel('p1'), lock: { stepsDeg: [0, 2.5, 5], highestStackMm: null, longestHangMm: null } }];
// 60 columns of 500 mm turn 294 degrees; inside diameter w / tan(joint / 2): 11 686 mm at 4.9 degrees, 11 452 mm at the
// 5 degrees that the lock takes.
const walls = [plainWall(60, 4.9, 10)];
const ring = () => {
  const results = layOutWalls(walls, shapes);
  return { results, checks: checkWalls(walls, shapes, results, hall, vehicle, wished), working: [] };
};
const kept = (...ceilings: Ceiling[]) => {
  const chapter = ring();
  const laid = layOutCeilings(ceilings, shapes, chapter.results);
  const checks = checkCeilings(ceilings, shapes, chapter.results, laid, hall, vehicle);
  const after = keepWallFixes(chapter, { checks }, { walls, ceilings, shapes, hall, vehicle });
  return { chapter, after, joints: after.checks.find(({ id }) => id === 'walls.joints.A')! };
};
/** A row of panels right through the ring, so many of 500 mm, centred. */
const beam = (panels: number): Ceiling =>
  plainCeiling({
    place: { xMm: 0, yMm: 0, turnDeg: 0, centredAcross: panels % 2 === 1, centredAlong: true },
    outline: { kind: 'rectangle', widthMm: panels * 500, depthMm: 500 },
  });

describe('keepWallFixes', () => {
  it('drops a fix that draws the ring in on a ceiling', () => {
    // 23 panels reach 5750 mm out, corners 5755 mm: inside 5843 mm as it stands, beyond 5726 mm after the fix.
    const { after, joints } = kept(beam(23));
    expect(joints).toMatchObject({ severity: 'stop', limit: 5 });
    expect(joints.fix).toBeUndefined();
    expect(after.checks).toHaveLength(ring().checks.length);
  });

  it('is the chapter as it was where the ceiling has room, where it runs into the ring already, and without one', () => {
    for (const ceilings of [[beam(20)], [beam(25)], []]) {
      const { chapter, after, joints } = kept(...ceilings);
      expect(after).toBe(chapter);
      expect(joints.fix).toBeDefined();
    }
  });
});
