import type { Ceiling } from '../../../src/plan/ceiling';

/** A rectangle of 4 x 3 panels 'p1' of 500 mm about the origin of the plan, six metres up. */
export function plainCeiling(more: Partial<Ceiling> = {}): Ceiling {
  return {
    id: 'ceiling',
    letter: 'B',
    name: 'Ceiling',
    panelId: 'p1',
    turnDeg: 0,
    place: { xMm: 0, yMm: 0, turnDeg: 0, centredAcross: false, centredAlong: true },
    outline: { kind: 'rectangle', widthMm: 2000, depthMm: 1500 },
    rule: 'whole',
    holes: [],
    height: { trimMm: 6000, lowestMm: 4000, highestMm: 7000 },
    ...more,
  };
}
