import { describe, expect, it } from 'vitest';
import { ceilingAxes } from '../../../src/calc/ceilings/ceiling-axes';
import { clipCeiling } from '../../../src/calc/ceilings/clip-ceiling';
import { coveredAreaM2 } from '../../../src/calc/ceilings/covered-area';
import { latticeOf } from '../../../src/calc/ceilings/lattice';
import { placedPanelType } from '../../../src/calc/surfaces/placed-panel-type';
import type { Ceiling } from '../../../src/plan/ceiling';
import { plainPanel } from '../panels/plain-panel';
import { plainCeiling } from './plain-ceiling';

/** Share of the disc that is covered. */
function cover(more: Partial<Ceiling>, centre: { xMm: number; yMm: number }, radiusMm: number): number {
  const ceiling = plainCeiling(more);
  const lattice = latticeOf(ceiling.place, placedPanelType(plainPanel(), 0));
  const area = coveredAreaM2(clipCeiling(ceiling, lattice)!, lattice, ceilingAxes(ceiling.place), centre, radiusMm);
  return area / (Math.PI * (radiusMm / 1000) ** 2);
}

describe('coveredAreaM2', () => {
  it('is the panels’ area over the disc’s where all lie inside', () => {
    // 12 panels of 0.25 m2 in a disc of 2 m radius: 3 / (4 pi).
    expect(cover({}, { xMm: 0, yMm: 0 }, 2000)).toBeCloseTo(3 / (4 * Math.PI), 12);
  });

  it('is whole where the disc lies under panels, and nought where it lies aside', () => {
    expect(cover({}, { xMm: 0, yMm: 0 }, 500)).toBeCloseTo(1, 12);
    expect(cover({}, { xMm: 5000, yMm: 0 }, 500)).toBe(0);
  });

  it('is a half where the edge of the panels runs through the middle of the disc, turned or not', () => {
    expect(cover({}, { xMm: 1000, yMm: 0 }, 600)).toBeCloseTo(0.5, 12);
    const turned = { ...plainCeiling().place, xMm: 300, yMm: -200, turnDeg: 90 };
    // Its own +x edge at 1000 points along plan +y after a quarter turn.
    expect(cover({ place: turned }, { xMm: 300, yMm: 800 }, 600)).toBeCloseTo(0.5, 12);
  });

  it('is a half along its own y too, off the middle', () => {
    // Its own +y edge at 750, x from -1000 to 1000: a disc of 600 about 400, 750.
    expect(cover({}, { xMm: 400, yMm: 750 }, 600)).toBeCloseTo(0.5, 12);
    expect(cover({}, { xMm: 400, yMm: -2750 }, 600)).toBe(0);
  });

  it('leaves holes out', () => {
    // The right half of twelve panels, taken away: what is left of the middle disc is its other half.
    const hole = { id: 'h', name: 'Hatch', xMm: 0, yMm: -750, widthMm: 1000, depthMm: 1500 };
    expect(cover({ holes: [hole] }, { xMm: 0, yMm: 0 }, 500)).toBeCloseTo(0.5, 12);
  });
});
