import { expect, test } from 'vitest';
import { applyCommand } from '../../src/plan/commands';
import { draftWall } from '../../src/plan/draft-wall';
import { samplePlan } from './sample-plan';

test('draftWall makes a wall that a plan takes, with a letter and ids of its own, again and again', () => {
  let plan = samplePlan('horseshoe');
  for (const letter of ['C', 'D', 'E']) {
    const wall = draftWall(plan, 'sedge-26');
    const outcome = applyCommand(plan, { name: 'add-wall', args: { wall } });
    expect(outcome).toHaveProperty('plan');
    plan = (outcome as { plan: typeof plan }).plan;
    expect(plan.walls.at(-1)).toMatchObject({
      letter,
      place: { xMm: 0, yMm: 0, turnDeg: 0 },
      baseMm: 0,
      path: [{ columns: 10, jointDeg: 0, mixed: null, jointBeforeDeg: 0 }],
      bands: [{ panelId: 'sedge-26', rows: 6, turnDeg: 0 }],
      holes: [],
    });
  }
});
