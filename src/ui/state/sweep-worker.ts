import { expose, type Remote, releaseProxy } from 'comlink';
import { createEvaluator, type Evaluator } from '../../calc/evaluate';
import type { Plan } from '../../plan/plan';
import { applyPatch, type PlanPatch } from './plan-patch';
import { type Ended, runInStretches } from './run-in-stretches';
import { type SweepName, type SweepRequest, sweepSteps } from './sweeps';

/** A function of the page: what arrives here is a stand-in for it that answers later. */
type Report = (items: readonly unknown[]) => void;

/** The worker's own plan, and an evaluator with memos of its own for each kind of search. Searches take turns. */
function createWorkerSweeps() {
  const evaluators = new Map<SweepName, Evaluator>();
  const running = new Set<number>();
  let plan: Plan | null = null;

  function evaluatorFor(name: SweepName): Evaluator {
    const known = evaluators.get(name) ?? createEvaluator();
    evaluators.set(name, known);
    return known;
  }

  return {
    open(first: Plan): void {
      plan = first;
    },
    change(patch: PlanPatch): void {
      if (!plan) throw new Error('the worker was sent a change before a plan');
      plan = applyPatch(plan, patch);
    },
    async run(id: number, request: SweepRequest, report: Report): Promise<Ended> {
      const asked = report as unknown as Remote<Report>;
      if (!plan) throw new Error('the worker was asked before it was sent a plan');
      running.add(id);
      try {
        const steps = sweepSteps(request, plan, evaluatorFor(request.name).evaluate);
        return await runInStretches(
          steps,
          async (items) => {
            await asked(items);
          },
          () => !running.has(id),
          () => performance.now(),
        );
      } finally {
        running.delete(id);
        asked[releaseProxy]();
      }
    },
    stop(id: number): void {
      running.delete(id);
    },
  };
}

export type WorkerSweeps = ReturnType<typeof createWorkerSweeps>;

expose(createWorkerSweeps());
