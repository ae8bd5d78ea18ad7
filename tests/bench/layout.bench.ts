import { bench, describe } from 'vitest';
import { checkCeilings } from '../../src/calc/ceilings/check-ceilings';
import { layOutCeilings } from '../../src/calc/ceilings/lay-out-ceilings';
import { listRings } from '../../src/calc/finder/rings/list-rings';
import { joinSurfaces } from '../../src/calc/surfaces/join-surfaces';
import { checkWalls } from '../../src/calc/walls/check-walls';
import { layOutWalls } from '../../src/calc/walls/lay-out-walls';
import { workWalls } from '../../src/calc/walls/work-walls';
import { plainCeiling } from '../calc/ceilings/plain-ceiling';
import { plainPanel } from '../calc/panels/plain-panel';
import { plainWall } from '../calc/walls/plain-wall';

const panels = [plainPanel('p1', { lock: { stepsDeg: [0, 0.15, 1, 2.5] } })];
const hall = { lengthMm: 1e5, widthMm: 1e5, clearHeightMm: 1e5, walkwayMm: 1200 };
const vehicle = { widthMm: 2600, heightMm: 4000 };
const wished = { form: 'ring', acrossMm: 22_900, heightMm: 6500, openingMm: 4000 } as const;

/** A ring of about so many panels in all, and a disc of panels inside it for a tenth of them. */
function stage(columns: number, jointDeg: number, rows: number, diameterMm: number) {
  const walls = [plainWall(columns, jointDeg, rows)];
  const ceilings = [plainCeiling({ outline: { kind: 'circle', diameterMm } })];
  return { walls, ceilings };
}

const sizes = {
  '1,800 panels': stage(130, 2.5, 13, 7600),
  '20,000 panels': stage(350, 1, 51, 25_000),
  '200,000 panels': stage(2300, 0.15, 78, 80_000),
};

for (const [size, { walls, ceilings }] of Object.entries(sizes)) {
  const laid = layOutWalls(walls, panels);
  const hung = layOutCeilings(ceilings, panels, laid);
  describe(size, () => {
    bench('lay out walls and ceilings, join them', () => {
      const wallsNow = layOutWalls(walls, panels);
      joinSurfaces(wallsNow, layOutCeilings(ceilings, panels, wallsNow));
    });
    bench('check walls and ceilings', () => {
      checkWalls(walls, panels, laid, hall, vehicle, wished);
      checkCeilings(ceilings, panels, laid, hung, hall, vehicle);
    });
    bench('show the working of walls', () => {
      workWalls(walls, panels, laid);
    });
  });
}

describe('one panel type', () => {
  bench('list ten rings', () => {
    const lockStepsDeg = [-5, -2.5, 0, 2.5, 5];
    listRings({ acrossMm: 20_000, openingMm: 4000, columnWidthMm: 500, depthMm: 80, lockStepsDeg }, 10);
  });
});
