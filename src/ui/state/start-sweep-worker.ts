import { proxy } from 'comlink';
import { connectWorker } from './connect-worker';
import type { SweepRemote } from './sweep-line';
import type { WorkerSweeps } from './sweep-worker';

/** Starts the worker that searches. One that cannot load or breaks rejects what it was asked. */
export function startSweepWorker(): SweepRemote {
  const { remote, answerOf, close } = connectWorker<WorkerSweeps>(
    new Worker(new URL('./sweep-worker.ts', import.meta.url), { type: 'module' }),
  );
  return {
    open: (plan) => answerOf(remote.open(plan)),
    change: (patch) => answerOf(remote.change(patch)),
    run: (id, request, report) => answerOf(remote.run(id, request, proxy(report))),
    stop: (id) => answerOf(remote.stop(id)),
    close,
  };
}
