import { connectWorker } from './connect-worker';
import type { EvaluationLine } from './evaluation-host';
import type { WorkerEvaluation } from './evaluation-worker';

/** Starts a worker that evaluates. A worker that cannot load or breaks rejects what it was asked. */
export function startEvaluationWorker(): EvaluationLine {
  const { remote, answerOf, close } = connectWorker<WorkerEvaluation>(
    new Worker(new URL('./evaluation-worker.ts', import.meta.url), { type: 'module' }),
  );
  return {
    open: (plan) => answerOf(remote.open(plan)),
    change: (patch) => answerOf(remote.change(patch)),
    close,
  };
}
