import { expose } from 'comlink';
import { createEvaluator } from '../../calc/evaluate';
import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import { changedChapters } from './changed-chapters';
import { applyPatch, type PlanPatch } from './plan-patch';

/** The worker's own plan and memos. Answers are copied, never transferred: a transferred memo would be left empty. */
function createWorkerEvaluation() {
  const evaluator = createEvaluator();
  let plan: Plan | null = null;
  let last: Evaluation | null = null;

  function answer(next: Plan): Partial<Evaluation> {
    plan = next;
    const evaluation = evaluator.evaluate(next);
    const changed = changedChapters(last, evaluation);
    last = evaluation;
    return changed;
  }

  return {
    open(first: Plan): Partial<Evaluation> {
      last = null;
      return answer(first);
    },
    change(patch: PlanPatch): Partial<Evaluation> {
      if (!plan) throw new Error('the worker was sent a change before a plan');
      return answer(applyPatch(plan, patch));
    },
  };
}

export type WorkerEvaluation = ReturnType<typeof createWorkerEvaluation>;

expose(createWorkerEvaluation());
