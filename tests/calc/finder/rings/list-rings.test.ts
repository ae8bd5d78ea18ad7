import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import reference from '../../../../fixtures/reference/geometry.json';
import { listRings, type RingBuild, type RingGiven } from '../../../../src/calc/finder/rings/list-rings';
import { checkCrossing } from '../../../../src/calc/walls/check-crossing';
import { layOutWalls } from '../../../../src/calc/walls/lay-out-walls';
import { plainPanel } from '../../panels/plain-panel';
import { expectFinite } from '../../surfaces/expect-finite';
import { judgeWall } from '../../walls/judge-wall';
import { plainWall } from '../../walls/plain-wall';

const FOOT_MM = 304.8;
const given: RingGiven = {
  acrossMm: 20_000,
  openingMm: 4000,
  columnWidthMm: 500,
  depthMm: 80,
  lockStepsDeg: [-5, -2.5, 0, 2.5, 5],
};
const wallOf = (ring: RingBuild) =>
  plainWall(1, 0, 1, { path: ring.path.map((segment) => ({ ...segment, id: 's1' })) });

describe('listRings', () => {
  it('finds the ring that the trade knows: 75 ft inside with 13 ft open is 136 columns at 2.5 degrees', () => {
    // Common practice, no source (fixtures/reference/geometry.json): 144 columns close, eight left out open about 13 ft.
    const { insideFt, openingFt, closesAtColumns, columnsLeftOut, jointDeg } = reference.tradeFacts;
    const wish = { ...given, acrossMm: insideFt * FOOT_MM, openingMm: openingFt * FOOT_MM };
    const [best] = listRings(wish, 5);
    expect(best).toMatchObject({
      columns: closesAtColumns - columnsLeftOut,
      path: [{ columns: 136, jointDeg, mixed: null, jointBeforeDeg: 0 }],
    });
    expect(best!.insideDiameterMm / 2).toBeCloseTo(11457.337793621136, 5);
    expect(best!.worstMm).toBeLessThan(1e-6);
  });

  it('closes a ring where no opening is wished', () => {
    const [best] = listRings({ ...given, acrossMm: 22_900, openingMm: 0 }, 3);
    expect(best).toMatchObject({ columns: 144, path: [{ mixed: null }] });
    expect(best!.openingMm).toBeLessThan(1e-6);
  });

  it('mixes joints to come nearer than whole steps do, and keeps the nearest ring of whole steps in the list', () => {
    const rings = listRings(given, 5);
    expect(rings).toHaveLength(5);
    expect(rings[0]!.path[0]!.mixed).not.toBeNull();
    expect(Math.abs(rings[0]!.insideDiameterMm - 20_000)).toBeLessThan(160);
    expect(Math.abs(rings[0]!.openingMm - 4000)).toBeLessThan(500);
    const whole = rings.find((ring) => ring.path[0]!.mixed === null)!;
    // Nearest whole step: 2.5 degrees, 22914.7 inside; 136 columns open 3980, 135 open 4471: of these 136 misses less.
    expect(whole.columns).toBe(136);
    expect(rings.at(-1)).toBe(whole);
  });

  it('beats or equals every other ring of these steps within ten columns, mixed in any number', () => {
    const [best] = listRings(given, 5);
    for (let columns = best!.columns - 10; columns <= best!.columns + 10; columns++) {
      for (let count = 0; count <= 40; count++) {
        const mixed = count === 0 ? null : { jointDeg: 5, count };
        const path = [{ id: 's1', columns, jointDeg: 2.5, mixed, jointBeforeDeg: 0 }];
        const judged = judgeWall(plainWall(1, 0, 1, { path }));
        const { insideDiameterMm, openingMm, bestFit, turnsDeg, frontMm } = judged.result;
        const ends = frontMm[frontMm.length - 2]! - frontMm[0]!;
        if (openingMm === null || turnsDeg > 360 || ends < 0) continue;
        const opening = openingMm < 4000 ? 2 * (4000 - openingMm) : openingMm - 4000;
        const miss = Math.abs(insideDiameterMm! - 20_000) + opening + 2 * bestFit!.worstMm;
        expect(miss, `${columns} columns, ${count} mixed in`).toBeGreaterThanOrEqual(best!.missMm - 1e-3);
      }
    }
  });

  it('ranks by what is missed', () => {
    const rings = listRings({ ...given, columnWidthMm: 609.6, lockStepsDeg: [0, 3, 6] }, 12);
    const misses = rings.slice(0, -1).map((ring) => ring.missMm);
    expect(misses).toEqual([...misses].sort((a, b) => a - b));
    expect(rings).toHaveLength(12);
  });

  it('gives none where the lock bends no ring', () => {
    expect(listRings({ ...given, lockStepsDeg: [] }, 5)).toEqual([]);
    expect(listRings({ ...given, lockStepsDeg: [0, -10] }, 5)).toEqual([]);
    expect(listRings(given, 0)).toEqual([]);
  });

  it('says of each ring what its wall comes to, with joints of the lock alone, and none crosses itself', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3000, max: 40_000 }),
        fc.integer({ min: 0, max: 8000 }),
        fc.constantFrom(250, 500, 600, 1000),
        fc.constantFrom<number[][]>([0, 2.5, 5], [2.5], [0, 1, 2, 3, 4, 5, 6], [7.5, 10, 15, 30]),
        (acrossMm, openingMm, columnWidthMm, lockStepsDeg) => {
          const panel = plainPanel('p1', { size: { widthMm: columnWidthMm }, lock: { stepsDeg: lockStepsDeg } });
          for (const ring of listRings({ acrossMm, openingMm, columnWidthMm, depthMm: 80, lockStepsDeg }, 4)) {
            expectFinite(ring, 'ring');
            const wall = layOutWalls([wallOf(ring)], [panel]).walls[0]!;
            expect(wall.columns).toBe(ring.columns);
            expect(wall.insideDiameterMm).toBeCloseTo(ring.insideDiameterMm, 6);
            expect(wall.openingMm).toBeCloseTo(ring.openingMm, 6);
            expect(wall.turnsDeg).toBe(ring.turnsDeg);
            for (const joint of wall.jointDeg.subarray(1)) expect(lockStepsDeg).toContain(joint);
            expect(checkCrossing(judgeWall(wallOf(ring), [panel]))[0]!.severity).toBe('pass');
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
