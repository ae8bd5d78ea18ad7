import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { restingNames } from '../../../src/calc/names/resting-names';
import type { HeldNames } from '../../../src/plan/held-names';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';
import { issue } from './issue';

const evaluator = createEvaluator();
const resting = (plan: Plan, names: HeldNames) => {
  const evaluation = evaluator.evaluate({ ...plan, names });
  const ground = { surfaces: evaluation.surfaces, walls: plan.walls, ceilings: evaluation.ceilings.results };
  return restingNames(names, ground, evaluation);
};

test('restingNames has none where everything stands as issued', () => {
  const { names, ...plan } = issue(samplePlan('flat'), evaluator);
  expect(resting({ ...plan, names }, names!)).toEqual({ processors: [], ports: [], circuits: [] });
});

test('restingNames has all that belongs to a surface that is gone, with its processors', () => {
  const issued = issue(samplePlan('horseshoe'), evaluator);
  const [ceiling] = issued.ceilings;
  const rest = resting({ ...issued, ceilings: [] }, issued.names!);
  const ofCeiling = ({ first }: HeldNames['ports'][number]) => first.surfaceId === ceiling!.id;
  expect(rest.ports).toEqual(issued.names!.ports.filter(ofCeiling));
  expect(rest.processors).toEqual(issued.names!.processors.filter(({ at }) => at.surfaceId === ceiling!.id));
  // Circuits of the wall that are joined with a neighbour now rest as well.
  expect(rest.circuits.filter(ofCeiling)).toEqual(issued.names!.circuits.filter(ofCeiling));
});
