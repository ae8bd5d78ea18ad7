import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { workCeilings } from '../../../src/calc/ceilings/work-ceilings';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { Ceiling } from '../../../src/plan/ceiling';
import type { Wall } from '../../../src/plan/wall';
import { ceilingArbitrary } from '../../arbitraries/ceiling';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { plainWall } from '../walls/plain-wall';
import { panels } from './judge-ceiling';
import { plainCeiling } from './plain-ceiling';

const work = (ceiling: Ceiling, ...made: Wall[]) => {
  const walls = layOutWalls(made, panels);
  return workCeilings([ceiling], panels, walls, layOutCeilings([ceiling], panels, walls));
};

describe('workCeilings', () => {
  it('shows every figure of a ceiling in a ring', () => {
    const steps = work(plainCeiling({ outline: { kind: 'circle', diameterMm: 9000 } }), plainWall(72, 5));
    expectStepsHold(steps);
    expect(steps.map((step) => step.figure)).toEqual([
      'panels of B',
      'area of B',
      'pixels of B',
      'cover of B',
      'least gap of B',
      'greatest gap of B',
    ]);
  });

  it('shows no cover and no gap without a wall, and nothing without panels', () => {
    expect(work(plainCeiling()).map((step) => step.symbol)).toEqual(['panels', 'area', 'pixels']);
    expect(work(plainCeiling({ panelId: 'gone' }))).toEqual([]);
  });

  it('prints lines that hold for any ceiling that the schema accepts', () => {
    fc.assert(
      fc.property(ceilingArbitrary, (ceiling) => {
        const steps = work(ceiling, plainWall(40, 5), plainWall(5, 0, 1, { id: 'flat' }));
        if (steps.length > 0) expectStepsHold(steps);
      }),
      { numRuns: 60 },
    );
  });
});
