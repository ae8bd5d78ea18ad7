import { proxy, type Remote, releaseProxy, wrap } from 'comlink';
import type { SweepRemote } from './sweep-line';
import type { WorkerSweeps } from './sweep-worker';

/** Starts the worker that searches. One that cannot load or breaks rejects what it was asked. */
export function startSweepWorker(): SweepRemote {
  const worker = new Worker(new URL('./sweep-worker.ts', import.meta.url), { type: 'module' });
  const remote: Remote<WorkerSweeps> = wrap<WorkerSweeps>(worker);
  const broken = new Promise<never>((_resolve, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the worker could not start')));
  });
  broken.catch(() => undefined);
  return {
    open: (plan) => Promise.race([remote.open(plan), broken]),
    change: (patch) => Promise.race([remote.change(patch), broken]),
    run: (id, request, report) => Promise.race([remote.run(id, request, proxy(report)), broken]),
    stop: (id) => Promise.race([remote.stop(id), broken]),
    close() {
      remote[releaseProxy]();
      worker.terminate();
    },
  };
}
