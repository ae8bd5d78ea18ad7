import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import type { Evaluation } from '../../src/calc/evaluation';
import { applyCommand } from '../../src/plan/commands';
import { samplePlan } from '../arbitraries/sample-plans';

test('evaluate computes no chapter anew for a tick in the build log: each stays the very object', () => {
  const computed: string[] = [];
  const { evaluate } = createEvaluator((chapter) => computed.push(chapter));
  const plan = samplePlan('horseshoe');
  const before = evaluate(plan);
  computed.length = 0;
  const ticked = applyCommand(plan, {
    name: 'put-ticks',
    args: { ticks: [{ step: 'stands', of: 'column', name: 'A C38', done: true, who: 'Ada', atMs: 1_764_000_000_000 }] },
  });
  if ('refused' in ticked) throw new Error(ticked.refused);
  expect(ticked.plan).not.toBe(plan);
  const after = evaluate(ticked.plan);
  expect(computed).toEqual([]);
  const { headline: _, checks: __, ...chapters } = before;
  for (const name of Object.keys(chapters) as (keyof Evaluation)[]) expect(after[name], name).toBe(before[name]);
  expect(after).toEqual(before);
});
