import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { schedulePlan } from '../../src/sheets/schedule-plan';
import { samplePlan } from '../arbitraries/sample-plans';

const plan = { ...samplePlan('flat'), name: '=1+1', revision: '' };
const evaluation = createEvaluator().evaluate(plan);
const rows = (given: typeof plan, evaluated = evaluation) => {
  const schedule = schedulePlan(given, evaluated);
  return new Map(Array.from({ length: schedule.count }, (_, i) => [schedule.row(i)[0], schedule.row(i)[1]]));
};

test('schedulePlan names the plan as it is written, and its revision where it has one', () => {
  expect(rows(plan).get('Plan')).toBe('=1+1');
  expect(rows(plan).get('Revision')).toBeNull();
  expect(rows({ ...plan, revision: 'B' }).get('Revision')).toBe('B');
});

test('schedulePlan counts panels, and the checks that stop the plan', () => {
  expect(rows(plan).get('Panels')).toBe(evaluation.surfaces.total);
  const check = { ...evaluation.checks[0]!, severity: 'stop' as const };
  const checks = [check, check, { ...check, severity: 'watch' as const }, { ...check, severity: 'offer' as const }];
  const counted = rows(plan, { ...evaluation, checks });
  expect([counted.get('Checks that stop it'), counted.get('Checks to look at')]).toEqual([2, 1]);
});
