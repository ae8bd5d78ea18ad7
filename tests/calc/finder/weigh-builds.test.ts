import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { findBuilds } from '../../../src/calc/finder/find-builds';
import { weighBuilds } from '../../../src/calc/finder/weigh-builds';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan = samplePlan('flat');
const builds = findBuilds(plan)
  .flatMap((found) => found.builds)
  .slice(0, 2);

test('weighBuilds gives the bounds of all builds before the first exact figure, in order', () => {
  const [one, two] = builds.map(({ key }) => key);
  const told = [...weighBuilds(plan, builds, createEvaluator().evaluate)];
  expect(told.map((item) => ['least' in item ? 'least' : 'exact', item.key])).toEqual([
    ['least', one],
    ['least', two],
    ['exact', one],
    ['exact', two],
  ]);
});

test('weighBuilds evaluates nothing that is not asked for', () => {
  let evaluations = 0;
  const { evaluate } = createEvaluator();
  const sweep = weighBuilds(plan, builds, (next) => {
    evaluations++;
    return evaluate(next);
  });
  for (let i = 0; i < 3; i++) sweep.next();
  expect(evaluations).toBe(1);
});
