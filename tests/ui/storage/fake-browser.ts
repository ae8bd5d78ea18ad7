import { emptyPlan } from '../../../src/plan/empty-plan';
import { parsePlan } from '../../../src/plan/parse-plan';
import type { Plan } from '../../../src/plan/plan';
import { serialisePlan } from '../../../src/plan/serialise-plan';
import type { BenchStore } from '../../../src/ui/state/create-bench-store';
import { createDesk, type Desk } from '../../../src/ui/storage/create-desk';
import { createWebLock } from '../../../src/ui/storage/document-lock';
import { readShare } from '../../../src/ui/storage/read-share';
import { readTicks } from '../../../src/ui/storage/read-ticks';
import { fakeBench, somePlan } from '../state/fake-bench';
import { createFakeClock } from './fake-clock';
import { createFakeChannels, createFakeLocks } from './fake-locks';
import { createMemoryShelf } from './memory-shelf';

export const planCalled = (name: string): Plan => ({ ...somePlan, name });

/** A browser: what its tabs share, and a way to open one. */
export function createBrowser() {
  const shelf = createMemoryShelf();
  const clock = createFakeClock();
  const lock = createWebLock(createFakeLocks());
  const channel = createFakeChannels();
  let keys = 0;
  const openTab = (): Desk =>
    createDesk({
      shelf,
      lock,
      channel: channel(),
      createBench: (first): BenchStore => {
        const bench = fakeBench({}, first.plan);
        bench.store.setState({ documentKey: first.documentKey, page: first.page });
        return bench;
      },
      parse: parsePlan,
      serialise: serialisePlan,
      readShare,
      readTicks,
      sample: async () => planCalled('Sample'),
      blank: () => emptyPlan({ id: 'new', name: 'New plan', lengths: 'metric' }),
      newKey: () => `key-${++keys}`,
      localStore: null,
      now: clock.now,
      wait: clock.wait,
    });
  return { shelf, clock, openTab };
}

export const benchOf = (desk: Desk) => desk.store.getState().bench!;
export const stateOf = (desk: Desk) => benchOf(desk).store.getState();
