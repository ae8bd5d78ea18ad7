import { expect, test } from 'vitest';
import { anchorKeys } from '../../../src/calc/compare/anchor-keys';
import { createEvaluator } from '../../../src/calc/evaluate';
import { anchorAt } from '../../../src/calc/runs/locate-anchor';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';

const ground = (plan: Plan) => {
  const { surfaces, ceilings } = createEvaluator().evaluate(plan);
  return { surfaces, walls: plan.walls, ceilings: ceilings.results };
};
const flat = samplePlan('flat');
const [wall] = flat.walls;

test('anchorKeys names the panels of a wall by segment, column in it and row', () => {
  const keys = anchorKeys(ground(flat));
  // Columns of eight panels, one after the other.
  expect(keys).toHaveLength(64);
  expect([keys[0], keys[7], keys[8]]).toEqual(['wall straight 1 1', 'wall straight 1 8', 'wall straight 2 1'].map(own));
});

const own = (key: string) => key.replace('wall', wall!.id);

test('anchorKeys of panels that stand in both plans stay when columns come before them', () => {
  const first = { ...wall!.path[0]!, id: 'first', columns: 2 };
  const longer = anchorKeys(ground({ ...flat, walls: [{ ...wall!, path: [first, ...wall!.path] }] }));
  expect(longer.slice(16)).toEqual(anchorKeys(ground(flat)));
});

test('anchorKeys tells apart exactly what anchorAt tells apart, on walls and ceilings', () => {
  const horseshoe = ground(samplePlan('horseshoe'));
  const { surfaces } = horseshoe;
  const keys = anchorKeys(horseshoe);
  const anchors = surfaces.surfaces.flatMap(({ count }, surface) =>
    Array.from({ length: count }, (_, panel) => {
      const { surfaceId, segmentId, column, row } = anchorAt(horseshoe, surface, panel)!;
      return `${surfaceId} ${segmentId === null ? '' : `${segmentId} `}${column} ${row}`;
    }),
  );
  expect(keys).toEqual(anchors);
  expect(new Set(keys).size).toBe(surfaces.total);
});

test('anchorKeys has none for a surface that the plan does not have', () => {
  const { surfaces, ceilings } = ground(flat);
  expect(new Set(anchorKeys({ surfaces, ceilings, walls: [] }))).toEqual(new Set([null]));
});
