import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import { emptyPlan } from '../../src/plan/empty-plan';
import type { Plan } from '../../src/plan/plan';
import { listSchedules } from '../../src/sheets/list-schedules';
import { sampleNames, samplePlan } from '../arbitraries/sample-plans';

const list = (plan: Plan) => {
  const evaluation = createEvaluator().evaluate(plan);
  return { listed: listSchedules(plan, evaluation), evaluation };
};
const samples = {
  horseshoe: list(samplePlan('horseshoe')),
  'ring-feet': list(samplePlan('ring-feet')),
  flat: list(samplePlan('flat')),
};

test('listSchedules has every schedule of a whole plan, in the order of chapters, the long ones last', () => {
  expect(samples.horseshoe.listed.map(({ name }) => name)).toEqual([
    ...['plan', 'legs', 'materials', 'rings', 'zones', 'runs', 'nodes', 'delay', 'sync', 'addresses', 'links'],
    ...['circuits', 'masses', 'failures', 'panels', 'pixel-map'],
  ]);
});

test('listSchedules has the build log once something is ticked', () => {
  const tick = { step: 'stands', of: 'column', name: 'A C38', done: true, who: 'Ada', atMs: 1 } as const;
  const { listed } = list({ ...samplePlan('horseshoe'), log: { ticks: [tick] } });
  expect(
    listed
      .find(({ name }) => name === 'log')
      ?.schedule.row(0)
      .slice(0, 4),
  ).toEqual(['column', 'A C38', 14, 'yes']);
});

test.each(sampleNames)('listSchedules of %s counts what the plan counts', (sample) => {
  const { listed, evaluation } = samples[sample];
  const count = (name: string) => listed.find((each) => each.name === name)?.schedule.count ?? 0;
  expect(count('panels')).toBe(evaluation.headline.panels);
  expect(count('pixel-map')).toBe(evaluation.headline.panels);
  expect(count('runs')).toBe(evaluation.runs.results.runs.length);
  expect(count('circuits')).toBe(evaluation.headline.circuits);
  expect(count('zones')).toBe(evaluation.headline.processors);
  expect(count('masses')).toBe(evaluation.surfaces.surfaces.reduce((sum, { columns }) => sum + columns, 0));
});

test.each(sampleNames)('listSchedules of %s tells names and labels apart, short enough for a sheet', (sample) => {
  const { listed } = samples[sample];
  expect(new Set(listed.map(({ name }) => name)).size).toBe(listed.length);
  expect(new Set(listed.map(({ label }) => label.toLowerCase())).size).toBe(listed.length);
  // 31 characters is the most that a spreadsheet takes for the name of a sheet (ECMA-376 leaves it open; the common limit).
  for (const { label } of listed) expect(label.length).toBeLessThanOrEqual(31);
  for (const { name } of listed) expect(name).toMatch(/^[a-z-]+$/);
});

test.each(sampleNames)('listSchedules of %s has a cell for each column in every first and last row', (sample) => {
  for (const { schedule } of samples[sample].listed) {
    expect(schedule.count).toBeGreaterThan(0);
    for (const index of [0, schedule.count - 1]) {
      expect(schedule.row(index)).toHaveLength(schedule.columns.length);
    }
    expect(schedule.totals ?? schedule.columns).toHaveLength(schedule.columns.length);
  }
});

test('listSchedules of a plan without a panel leaves out what has no row', () => {
  expect(
    list(emptyPlan({ id: 'empty', name: 'Nothing', lengths: 'metric' })).listed.map(({ name }) => name),
  ).not.toContain('panels');
});
