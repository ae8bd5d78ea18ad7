import type { Plan } from '../../src/plan/plan';
import { samplePlan } from '../arbitraries/sample-plans';

/** The horseshoe of the samples with another wall and ceiling: so many columns turned so far at every joint, so many rows, a disc above. */
export function planOfSize(columns: number, jointDeg: number, rows: number, diameterMm: number): Plan {
  const plan = samplePlan('horseshoe');
  const wall = plan.walls[0]!;
  const path = [{ ...wall.path[0]!, columns, jointDeg, mixed: null, jointBeforeDeg: 0 }];
  const lockTo = (stepsDeg: readonly number[]) => [...new Set([...stepsDeg, jointDeg])].sort((a, b) => a - b);
  return {
    ...plan,
    catalogue: {
      ...plan.catalogue,
      panels: plan.catalogue.panels.map((panel) => ({
        ...panel,
        lock: { ...panel.lock, stepsDeg: lockTo(panel.lock.stepsDeg) },
      })),
    },
    walls: [{ ...wall, path, bands: [{ ...wall.bands[0]!, rows }], holes: [] }],
    ceilings: plan.ceilings.map((ceiling) => ({
      ...ceiling,
      outline: { kind: 'circle' as const, diameterMm },
      holes: [],
    })),
  };
}
