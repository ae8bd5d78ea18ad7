import { expect, it } from 'vitest';
import type { Evaluation } from '../../src/calc/evaluation';
import type { Plan } from '../../src/plan/plan';
import { stageParts } from '../../src/sheets/stage-parts';
import { stageFixture } from '../arbitraries/evaluation-fixture';

it('stageParts takes the parts themselves, so that what an edit left alone keeps its identity', () => {
  const { surfaces, walls, ceilings, zones, runs, power, hall, vehicle } = stageFixture({
    columns: 3,
    rows: 2,
    jointDeg: 0,
  });
  const chapter = <T>(results: T) => ({ results, checks: [], working: [] });
  const evaluation = {
    surfaces,
    walls: chapter({ walls }),
    ceilings: chapter({ ceilings }),
    zones: chapter({ zones }),
    runs: chapter(runs),
    power: chapter(power),
  } as unknown as Evaluation;
  const plan = {
    wish: { hall, vehicle },
    signal: { reachMm: 2300, ceilingEntry: 'left' },
    lengths: 'feet',
  } as unknown as Plan;
  const parts = stageParts(plan, evaluation);
  for (const [key, value] of Object.entries({ surfaces, walls, ceilings, zones, runs, power, hall, vehicle })) {
    expect(parts[key as keyof typeof parts]).toBe(value);
  }
  expect(parts).toMatchObject({ reachMm: 2300, ceilingEntry: 'left', lengths: 'feet' });
});
