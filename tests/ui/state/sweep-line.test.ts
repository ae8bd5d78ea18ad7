import { expect, test } from 'vitest';
import { emptyPlan } from '../../../src/plan/empty-plan';
import type { Plan } from '../../../src/plan/plan';
import { applyPatch } from '../../../src/ui/state/plan-patch';
import type { Ended } from '../../../src/ui/state/run-in-stretches';
import { createSweepLine, type SweepListener, type SweepRemote } from '../../../src/ui/state/sweep-line';

const plan = emptyPlan({ id: 'one', name: 'One', lengths: 'metric' });
const renamed: Plan = { ...plan, name: 'Two' };

interface Call {
  readonly id: number;
  /** The plan that the worker held when it was asked. */
  readonly plan: Plan | null;
  readonly report: (items: readonly unknown[]) => void;
  readonly end: (ended: Ended) => void;
  readonly break: (error: Error) => void;
}

/** Workers that hold their plan as the real one does, and answer when they are told to. */
function fakeRemotes() {
  const calls: Call[] = [];
  const stopped: number[] = [];
  const opened: string[] = [];
  let closed = 0;
  const start = (): SweepRemote => {
    let held: Plan | null = null;
    return {
      async open(next) {
        opened.push(next.name);
        held = next;
      },
      async change(patch) {
        held = applyPatch(held!, patch);
      },
      run: (id, _request, report) =>
        new Promise((end, fail) => {
          calls.push({ id, plan: held, report, end, break: fail });
        }),
      async stop(id) {
        stopped.push(id);
      },
      close() {
        closed++;
      },
    };
  };
  return { start, calls, stopped, opened, closed: () => closed };
}

function listen() {
  const heard: unknown[] = [];
  const listener: SweepListener<'rates'> = {
    onItems: (items) => heard.push(...items),
    onAnswer: () => heard.push('answered'),
    onFailure: (reason) => heard.push(`failed: ${reason}`),
  };
  return { heard, listener };
}

const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

test('start tells its listener the items and the answer', async () => {
  const remotes = fakeRemotes();
  const { heard, listener } = listen();
  createSweepLine(remotes.start).start(plan, 'rates', null, listener);
  remotes.calls[0]!.report(['first']);
  remotes.calls[0]!.end({ answer: undefined });
  await settle();
  expect(heard).toEqual(['first', 'answered']);
});

test('start sends a plan once and then only what changed, so that the worker keeps its memos', () => {
  const remotes = fakeRemotes();
  const line = createSweepLine(remotes.start);
  line.start(plan, 'rates', null, listen().listener);
  line.start(plan, 'rates', ['a'], listen().listener);
  line.start(renamed, 'rates', null, listen().listener);
  expect(remotes.opened).toEqual(['One']);
  expect(remotes.calls.map((call) => call.plan?.name)).toEqual(['One', 'One', 'Two']);
  expect(remotes.calls[2]!.plan!.catalogue).toBe(plan.catalogue);
});

test('a listener hears nothing after it stopped its search, whatever is still on its way', async () => {
  const remotes = fakeRemotes();
  const line = createSweepLine(remotes.start);
  const { heard, listener } = listen();
  const stop = line.start(plan, 'rates', null, listener);
  stop();
  line.start(renamed, 'rates', null, listen().listener);
  remotes.calls[0]!.report(['late']);
  remotes.calls[0]!.end({ answer: undefined });
  await settle();
  expect(heard).toEqual([]);
  expect(remotes.stopped).toEqual([remotes.calls[0]!.id]);
});

test('searches run beside each other and hear only of themselves', async () => {
  const remotes = fakeRemotes();
  const line = createSweepLine(remotes.start);
  const [one, other] = [listen(), listen()];
  line.start(plan, 'rates', null, one.listener);
  line.start(plan, 'rates', ['a'], other.listener);
  remotes.calls[1]!.report(['other']);
  remotes.calls[0]!.report(['one']);
  expect([one.heard, other.heard]).toEqual([['one'], ['other']]);
});

test('a worker that breaks is said so, closed, and replaced by one that is sent the whole plan', async () => {
  const remotes = fakeRemotes();
  const line = createSweepLine(remotes.start);
  const { heard, listener } = listen();
  line.start(plan, 'rates', null, listener);
  remotes.calls[0]!.break(new Error('out of memory'));
  await settle();
  expect(heard).toEqual(['failed: out of memory']);
  expect(remotes.closed()).toBe(1);
  line.start(renamed, 'rates', null, listen().listener);
  expect(remotes.opened).toEqual(['One', 'Two']);
});
