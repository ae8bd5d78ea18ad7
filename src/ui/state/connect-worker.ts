import { type Remote, releaseProxy, wrap } from 'comlink';

export interface WorkerConnection<Far> {
  readonly remote: Remote<Far>;
  /** The answer, or a rejection once the worker cannot load or breaks. */
  readonly answerOf: <Answer>(asked: Answer) => Promise<Awaited<Answer>>;
  close(): void;
}

/** The far end of a worker that has just been started. */
export function connectWorker<Far>(worker: Worker): WorkerConnection<Far> {
  const remote: Remote<Far> = wrap<Far>(worker);
  const broken = new Promise<never>((_resolve, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the worker could not start')));
  });
  broken.catch(() => undefined);
  return {
    remote,
    answerOf: (asked) => Promise.race([asked, broken]),
    close() {
      remote[releaseProxy]();
      worker.terminate();
    },
  };
}
