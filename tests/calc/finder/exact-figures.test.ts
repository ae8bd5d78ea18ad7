import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { exactFigures } from '../../../src/calc/finder/exact-figures';
import { findBuilds } from '../../../src/calc/finder/find-builds';
import { applyCommand } from '../../../src/plan/commands';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const { evaluate } = createEvaluator();
const build = findBuilds(plan).flatMap(({ builds }) => builds)[0]!;

test('exactFigures are those of the plan with the build in it', () => {
  const outcome = applyCommand(plan, build.command);
  if ('refused' in outcome) throw new Error(outcome.refused);
  const { headline } = evaluate(outcome.plan);
  expect(exactFigures(plan, build, evaluate)).toMatchObject({
    processors: headline.processors,
    ports: headline.portsUsed,
    worstLegA: headline.worstLegA,
  });
  expect(headline.columns).toBe(build.columns);
});
