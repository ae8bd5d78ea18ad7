import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../../src/calc/evaluate';
import { entryCommand, stepCommand } from '../../../../src/calc/runs/hand-changes/step-command';
import { applyCommand, type Command } from '../../../../src/plan/commands';
import type { Plan } from '../../../../src/plan/plan';
import { samplePlan } from '../../../plan/sample-plan';

const { evaluate } = createEvaluator();
const plan = samplePlan('flat');
const ground = evaluate(plan);
const { runs, order, runOf, placeOf } = ground.runs.results;
const apply = (before: Plan, command: Command) => {
  const outcome = applyCommand(before, command);
  if ('refused' in outcome) throw new Error(outcome.refused);
  return outcome.plan;
};
const commandOf = (step: ReturnType<typeof stepCommand>) => {
  if ('reason' in step) throw new Error(step.reason);
  return step.command;
};
const panelsOf = (run: number) => [...order.subarray(runs[run]!.start, runs[run]!.start + runs[run]!.count)];

describe('stepCommand', () => {
  it('cuts between two panels that follow each other: one run more, the same panels', () => {
    const [, second, third] = panelsOf(0) as [number, number, number];
    const after = evaluate(apply(plan, commandOf(stepCommand(plan, ground, third, second)))).runs.results;
    expect(after.runs).toHaveLength(runs.length + 1);
    expect(after.runOf[second]).not.toBe(after.runOf[third]);
    expect(after.resting).toEqual([]);
  });

  it('joins a cut again: the plan is as it was', () => {
    const [, second, third] = panelsOf(0) as [number, number, number];
    const cut = apply(plan, commandOf(stepCommand(plan, ground, second, third)));
    const joined = apply(cut, commandOf(stepCommand(cut, evaluate(cut), second, third)));
    expect(joined.handChanges).toEqual(plan.handChanges);
  });

  it('joins two runs of one zone whose panels are neighbours', () => {
    const halves = apply(plan, commandOf(stepCommand(plan, ground, panelsOf(0)[2]!, panelsOf(0)[3]!)));
    const cut = evaluate(halves);
    const { surfaces } = ground;
    const [table] = surfaces.surfaces;
    // A panel of another run beside the short half.
    const short = cut.runs.results.runOf[panelsOf(0)[0]!]!;
    const pair = [...cut.runs.results.runOf.keys()].flatMap((a) => {
      if (cut.runs.results.runOf[a] !== short) return [];
      const beside = table!.at[table!.column[a]! * table!.rows + table!.row[a]! - 1] ?? -1;
      return beside >= 0 && cut.runs.results.runOf[beside] !== short ? [[a, beside] as const] : [];
    })[0];
    if (pair === undefined) throw new Error('no pair to join');
    const joined = evaluate(apply(halves, commandOf(stepCommand(halves, cut, ...pair)))).runs.results;
    const change = joined.resting[0];
    if (change === undefined) expect(joined.runOf[pair[0]]).toBe(joined.runOf[pair[1]]);
    else expect(change.reason).toBe('the joined run would be more than a port takes');
  });

  it('says why where a step means nothing', () => {
    const [first, second] = panelsOf(0) as [number, number];
    expect(stepCommand(plan, ground, first, first)).toMatchObject({ reason: expect.stringContaining('edge') });
    const far = order[order.length - 1]!;
    expect(stepCommand(plan, ground, first, far)).toMatchObject({ reason: expect.stringContaining('edge') });
    expect(stepCommand(plan, ground, -1, second)).toMatchObject({ reason: expect.stringContaining('no run') });
  });
});

describe('entryCommand', () => {
  it('turns a run round at its last panel', () => {
    const last = panelsOf(0).at(-1)!;
    const after = evaluate(apply(plan, commandOf(entryCommand(plan, ground, last)))).runs.results;
    expect(after.placeOf[last]).toBe(1);
  });

  it('says why where its run begins there already, and off every run', () => {
    expect(placeOf[panelsOf(0)[0]!]).toBe(1);
    expect(runOf[panelsOf(0)[0]!]).toBe(0);
    expect(entryCommand(plan, ground, panelsOf(0)[0]!)).toMatchObject({ reason: expect.stringContaining('already') });
    expect(entryCommand(plan, ground, -1)).toMatchObject({ reason: expect.stringContaining('no run') });
  });
});
