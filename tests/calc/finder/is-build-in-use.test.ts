import { expect, test } from 'vitest';
import { findBuilds } from '../../../src/calc/finder/find-builds';
import { isBuildInUse } from '../../../src/calc/finder/is-build-in-use';
import { applyCommand } from '../../../src/plan/commands';
import { samplePlan } from '../../arbitraries/sample-plans';

const plan = samplePlan('ring-feet');
const builds = findBuilds(plan).flatMap((found) => found.builds);

test('isBuildInUse: the build that was taken, and no other of the list', () => {
  for (const build of builds.slice(0, 4)) {
    const outcome = applyCommand(plan, build.command);
    if (!('plan' in outcome)) throw new Error(outcome.refused);
    expect(builds.filter((each) => isBuildInUse(each, outcome.plan.walls))).toEqual([build]);
  }
});

test('isBuildInUse goes by columns and rows, not by name, place or segment', () => {
  const build = builds[0]!;
  const outcome = applyCommand(plan, build.command);
  if (!('plan' in outcome)) throw new Error(outcome.refused);
  const [wall] = outcome.plan.walls;
  const path = wall!.path.map((segment) => ({ ...segment, id: `${segment.id}-x` }));
  expect(isBuildInUse(build, [{ ...wall!, name: 'Other', path, baseMm: 100 }])).toBe(true);
  const wider = wall!.path.map((segment, i) => (i === 0 ? { ...segment, columns: segment.columns + 1 } : segment));
  expect(isBuildInUse(build, [{ ...wall!, path: wider }])).toBe(false);
  expect(isBuildInUse(build, [])).toBe(false);
});
