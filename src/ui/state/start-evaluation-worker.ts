import { type Remote, releaseProxy, wrap } from 'comlink';
import type { EvaluationLine } from './evaluation-host';
import type { WorkerEvaluation } from './evaluation-worker';

/** Starts a worker that evaluates. A worker that cannot load or breaks rejects what it was asked. */
export function startEvaluationWorker(): EvaluationLine {
  const worker = new Worker(new URL('./evaluation-worker.ts', import.meta.url), { type: 'module' });
  const remote: Remote<WorkerEvaluation> = wrap<WorkerEvaluation>(worker);
  const broken = new Promise<never>((_resolve, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the worker could not start')));
  });
  broken.catch(() => undefined);
  return {
    open: (plan) => Promise.race([remote.open(plan), broken]),
    change: (patch) => Promise.race([remote.change(patch), broken]),
    close() {
      remote[releaseProxy]();
      worker.terminate();
    },
  };
}
