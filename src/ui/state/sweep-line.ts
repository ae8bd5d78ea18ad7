import type { Plan } from '../../plan/plan';
import { diffPlan, type PlanPatch } from './plan-patch';
import type { Ended } from './run-in-stretches';
import type { SweepName, SweepRequest, Sweeps } from './sweeps';

/** The far end: a worker that keeps its own plan and runs searches over it. */
export interface SweepRemote {
  open(plan: Plan): Promise<void>;
  change(patch: PlanPatch): Promise<void>;
  run(id: number, request: SweepRequest, report: (items: readonly unknown[]) => void): Promise<Ended>;
  stop(id: number): Promise<void>;
  close(): void;
}

/** Who asked for a search hears of it here, until it is stopped. */
export interface SweepListener<Name extends SweepName> {
  readonly onItems: (items: readonly Sweeps[Name]['item'][]) => void;
  readonly onAnswer: (answer: Sweeps[Name]['answer']) => void;
  /** The worker could not start or broke: a fault of the program, never of the plan. */
  readonly onFailure: (reason: string) => void;
}

export interface SweepLine {
  /** Starts a search and gives what stops it. After that its listener hears nothing more, whatever is still on its way. */
  start<Name extends SweepName>(
    plan: Plan,
    name: Name,
    asked: Sweeps[Name]['asked'],
    listener: SweepListener<Name>,
  ): () => void;
}

/** All searches of the page share one worker, started with the first of them and again after it broke. */
export function createSweepLine(startRemote: () => SweepRemote): SweepLine {
  let remote: SweepRemote | null = null;
  let sent: Plan | null = null;
  let lastId = 0;

  function hangUp(broken: SweepRemote): void {
    if (remote !== broken) return;
    broken.close();
    remote = null;
    sent = null;
  }

  function send(to: SweepRemote, plan: Plan): Promise<void> {
    const before = sent;
    sent = plan;
    if (before === plan) return Promise.resolve();
    return before === null ? to.open(plan) : to.change(diffPlan(before, plan));
  }

  return {
    start(plan, name, asked, listener) {
      lastId += 1;
      const id = lastId;
      remote ??= startRemote();
      const to = remote;
      let listens = true;
      const fail = (error: unknown) => {
        hangUp(to);
        if (listens) listener.onFailure(error instanceof Error ? error.message : String(error));
        listens = false;
      };
      send(to, plan).catch(fail);
      to.run(id, { name, asked } as SweepRequest, (items) => {
        if (listens) listener.onItems(items as never);
      }).then((ended) => {
        if (listens && 'answer' in ended) listener.onAnswer(ended.answer as never);
      }, fail);
      return () => {
        if (!listens) return;
        listens = false;
        to.stop(id).catch(() => hangUp(to));
      };
    },
  };
}
