import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createEvaluator } from '../../../src/calc/evaluate';
import { parsePlan } from '../../../src/plan/parse-plan';
import { estimatePanelCount } from '../../../src/ui/state/estimate-panel-count';
import { somePlan } from './fake-bench';

test('estimatePanelCount of a plan without surfaces is 0', () => {
  expect(estimatePanelCount(somePlan)).toBe(0);
});

test.each(['horseshoe', 'ring-feet', 'flat'])(
  'estimatePanelCount of %s lies at or little above what is laid out',
  (name) => {
    const parsed = parsePlan(readFileSync(`fixtures/plans/${name}.json`, 'utf8'));
    if ('refused' in parsed) throw new Error(parsed.sentence);
    const laidOut = createEvaluator().evaluate(parsed.plan).surfaces.total;
    const estimate = estimatePanelCount(parsed.plan);
    expect(estimate).toBeGreaterThanOrEqual(laidOut);
    // A round ceiling fills pi / 4 of its box.
    expect(estimate).toBeLessThan(laidOut * 1.35);
  },
);
