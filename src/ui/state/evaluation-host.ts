import type { Evaluation } from '../../calc/evaluation';
import type { Plan } from '../../plan/plan';
import { diffPlan, type PlanPatch } from './plan-patch';

/** The far end of a worker that keeps its own plan and answers with the chapters that changed since its last answer. */
export interface EvaluationLine {
  open(plan: Plan): Promise<Partial<Evaluation>>;
  change(patch: PlanPatch): Promise<Partial<Evaluation>>;
  close(): void;
}

/** What came out of evaluating one plan. */
export type Evaluated = { readonly evaluation: Evaluation } | { readonly failure: string };

export interface EvaluationHost {
  /** Evaluates a small plan at once. A large one gives null and is answered through `onEvaluated`, unless a newer
   *  plan was asked for by then: only the newest is ever answered. */
  evaluate(plan: Plan): Evaluated | null;
  close(): void;
}

export interface EvaluationHostParts {
  /** Makes the evaluator for small plans, with memos of its own; called when the first one comes. */
  readonly createEvaluator: () => { evaluate(plan: Plan): Evaluation };
  /** Whether a plan is too large to be evaluated between two frames. */
  readonly isLarge: (plan: Plan) => boolean;
  /** Starts the worker; called when the first large plan comes, and again after one broke. */
  readonly startLine: () => EvaluationLine;
  readonly onEvaluated: (evaluated: Evaluated) => void;
}

interface Job {
  readonly plan: Plan;
  readonly revision: number;
}

function failureOf(error: unknown): Evaluated {
  return { failure: error instanceof Error ? error.message : String(error) };
}

/** Evaluates small plans at once and large ones in a worker, one job at a time, skipping to the newest. */
export function createEvaluationHost(parts: EvaluationHostParts): EvaluationHost {
  let evaluator: { evaluate(plan: Plan): Evaluation } | null = null;
  let newest = 0;
  let waiting: Job | null = null;
  let working = false;
  let line: EvaluationLine | null = null;
  let sent: Plan | null = null;
  let received: Partial<Evaluation> = {};

  function hangUp(): void {
    line?.close();
    line = null;
    sent = null;
    received = {};
  }

  async function ask(job: Job): Promise<void> {
    line ??= parts.startLine();
    const answer = sent ? line.change(diffPlan(sent, job.plan)) : line.open(job.plan);
    sent = job.plan;
    const changed = await answer;
    // A late answer is still the base of the next one: the worker sends only what changed since.
    received = { ...received, ...changed };
    if (job.revision === newest) parts.onEvaluated({ evaluation: received as Evaluation });
  }

  async function work(): Promise<void> {
    if (working) return;
    working = true;
    while (waiting) {
      const job: Job = waiting;
      waiting = null;
      try {
        await ask(job);
      } catch (error) {
        hangUp();
        if (job.revision === newest) parts.onEvaluated(failureOf(error));
      }
    }
    working = false;
  }

  function evaluateNow(plan: Plan): Evaluated {
    try {
      evaluator ??= parts.createEvaluator();
      return { evaluation: evaluator.evaluate(plan) };
    } catch (error) {
      return failureOf(error);
    }
  }

  return {
    evaluate(plan) {
      newest += 1;
      waiting = null;
      if (!parts.isLarge(plan)) return evaluateNow(plan);
      waiting = { plan, revision: newest };
      void work();
      return null;
    },
    close() {
      newest += 1;
      waiting = null;
      hangUp();
    },
  };
}
