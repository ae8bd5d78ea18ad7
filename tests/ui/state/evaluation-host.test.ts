import { expect, test } from 'vitest';
import type { Evaluation } from '../../../src/calc/evaluation';
import type { Plan } from '../../../src/plan/plan';
import { createEvaluationHost, type Evaluated, type EvaluationLine } from '../../../src/ui/state/evaluation-host';
import { applyPatch } from '../../../src/ui/state/plan-patch';
import { somePlan } from './fake-bench';

const planWith = (cameras: number): Plan => ({ ...somePlan, wish: { ...somePlan.wish, camerasAtOnce: cameras } });

/** A worker whose answers are let go by hand. */
function fakeLine() {
  let plan: Plan | null = null;
  const asked: { readonly plan: Plan; answer(changed: Partial<Evaluation>): void; fail(error: Error): void }[] = [];
  let closed = 0;
  const ask = (next: Plan) =>
    new Promise<Partial<Evaluation>>((resolve, reject) => {
      plan = next;
      asked.push({ plan: next, answer: resolve, fail: reject });
    });
  const line: EvaluationLine = {
    open: ask,
    change: (patch) => ask(applyPatch(plan!, structuredClone(patch))),
    close: () => {
      closed += 1;
    },
  };
  return { line, asked, closed: () => closed };
}

/** Chapters by name, each only a word that tells it apart. */
const chapters = (words: { readonly walls?: string; readonly power?: string }) =>
  words as unknown as Partial<Evaluation>;
const settled = () => new Promise((resolve) => setTimeout(resolve));

function hostWith(lines: readonly EvaluationLine[], evaluate: (plan: Plan) => Evaluation = () => ({}) as Evaluation) {
  const answers: Evaluated[] = [];
  let started = 0;
  const host = createEvaluationHost({
    createEvaluator: () => ({ evaluate }),
    isLarge: (plan) => plan.wish.camerasAtOnce > 1,
    startLine: () => lines[started++]!,
    onEvaluated: (evaluated) => answers.push(evaluated),
  });
  return { host, answers, started: () => started };
}

test('evaluate answers a small plan at once and starts no worker', () => {
  const evaluation = {} as Evaluation;
  const { host, answers, started } = hostWith([], () => evaluation);
  expect(host.evaluate(planWith(1))).toEqual({ evaluation });
  expect(answers).toEqual([]);
  expect(started()).toBe(0);
});

test('evaluate turns an exception into a failure with its reason', () => {
  const { host } = hostWith([], () => {
    throw new Error('broken');
  });
  expect(host.evaluate(planWith(1))).toEqual({ failure: 'broken' });
});

test('evaluate sends a large plan whole, then only what changed, and puts the answers together', async () => {
  const { line, asked } = fakeLine();
  const { host, answers } = hostWith([line]);
  expect(host.evaluate(planWith(2))).toBeNull();
  asked[0]!.answer(chapters({ walls: 'walls', power: 'power' }));
  await settled();
  host.evaluate(planWith(3));
  expect(asked[1]!.plan.wish.camerasAtOnce).toBe(3);
  asked[1]!.answer(chapters({ walls: 'new walls' }));
  await settled();
  expect(answers).toEqual([
    { evaluation: { walls: 'walls', power: 'power' } },
    { evaluation: { walls: 'new walls', power: 'power' } },
  ]);
});

test('evaluate drops a late answer, yet builds the next one on it', async () => {
  const { line, asked } = fakeLine();
  const { host, answers } = hostWith([line]);
  host.evaluate(planWith(2));
  host.evaluate(planWith(3));
  host.evaluate(planWith(4));
  asked[0]!.answer(chapters({ walls: 'walls', power: 'power' }));
  await settled();
  expect(answers).toEqual([]);
  // The one between was never asked: the worker goes to the newest.
  expect(asked.map(({ plan }) => plan.wish.camerasAtOnce)).toEqual([2, 4]);
  asked[1]!.answer(chapters({ power: 'new power' }));
  await settled();
  expect(answers).toEqual([{ evaluation: { walls: 'walls', power: 'new power' } }]);
});

test('evaluate of a small plan overtakes a large one that is still being worked out', async () => {
  const { line, asked } = fakeLine();
  const { host, answers } = hostWith([line]);
  host.evaluate(planWith(2));
  host.evaluate(planWith(1));
  asked[0]!.answer(chapters({ walls: 'walls' }));
  await settled();
  expect(answers).toEqual([]);
});

test('a worker that breaks gives a failure, and the next plan starts another with the whole plan', async () => {
  const [first, second] = [fakeLine(), fakeLine()];
  const { host, answers, started } = hostWith([first.line, second.line]);
  host.evaluate(planWith(2));
  first.asked[0]!.fail(new Error('out of memory'));
  await settled();
  expect(answers).toEqual([{ failure: 'out of memory' }]);
  expect(first.closed()).toBe(1);
  host.evaluate(planWith(3));
  second.asked[0]!.answer(chapters({ walls: 'walls' }));
  await settled();
  expect(started()).toBe(2);
  expect(answers.at(-1)).toEqual({ evaluation: { walls: 'walls' } });
});

test('close lets nothing come after it', async () => {
  const { line, asked, closed } = fakeLine();
  const { host, answers } = hostWith([line]);
  host.evaluate(planWith(2));
  host.close();
  asked[0]!.answer(chapters({ walls: 'walls' }));
  await settled();
  expect(answers).toEqual([]);
  expect(closed()).toBe(1);
});
