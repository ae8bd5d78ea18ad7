import { expect, test } from 'vitest';
import { emptyPlan } from '../../../src/plan/empty-plan';
import { parsePlan } from '../../../src/plan/parse-plan';
import { serialisePlan } from '../../../src/plan/serialise-plan';
import { createDesk, type Desk } from '../../../src/ui/storage/create-desk';
import { createWebLock, type DocumentLock } from '../../../src/ui/storage/document-lock';
import { readShare } from '../../../src/ui/storage/read-share';
import { readTicks } from '../../../src/ui/storage/read-ticks';
import { fakeBench, somePlan } from '../state/fake-bench';
import { createFakeClock } from './fake-clock';
import { createFakeChannels, createFakeLocks } from './fake-locks';
import { createMemoryShelf } from './memory-shelf';

/** Two tabs of one browser on the same plan; the first can be closed like a killed tab: its locks go free. */
async function twoTabs() {
  const shelf = createMemoryShelf();
  const clock = createFakeClock();
  const locks = createFakeLocks();
  const channel = createFakeChannels();
  shelf.put('k', serialisePlan(somePlan));
  const openTab = async () => {
    const claims: { readonly release: () => void }[] = [];
    const web = createWebLock(locks);
    const lock: DocumentLock = {
      async claim(key, onHeld) {
        const claimed = await web.claim(key, onHeld);
        claims.push(claimed);
        return claimed;
      },
    };
    const desk = createDesk({
      shelf,
      lock,
      channel: channel(),
      createBench: (first) => {
        const bench = fakeBench({}, first.plan);
        bench.store.setState({ documentKey: first.documentKey });
        return bench;
      },
      parse: parsePlan,
      serialise: serialisePlan,
      readShare,
      readTicks,
      sample: async () => somePlan,
      blank: () => emptyPlan({ id: 'new', name: 'New plan', lengths: 'metric' }),
      newKey: () => 'copy',
      localStore: null,
      now: clock.now,
      wait: clock.wait,
    });
    await desk.actions.start('#plan=k');
    const close = () => {
      for (const { release } of claims) release();
    };
    return { desk, close };
  };
  return { shelf, clock, first: await openTab(), second: await openTab() };
}

const benchOf = (desk: Desk) => desk.store.getState().bench!;
const stateOf = (desk: Desk) => benchOf(desk).store.getState();

test('the second tab follows: it says so, refuses changes and shows what the first one writes', async () => {
  const { shelf, clock, first, second } = await twoTabs();
  expect(stateOf(first.desk).follows).toBe(false);
  expect(stateOf(second.desk).follows).toBe(true);
  expect(benchOf(second.desk).actions.setField(['name'], 'Mine')).toHaveProperty('refused');
  benchOf(first.desk).actions.setField(['name'], 'From the first');
  await clock.pass(1000);
  expect(stateOf(second.desk).plan.name).toBe('From the first');
  await clock.pass(10_000);
  expect(shelf.writes).toHaveLength(1);
});

test('the second tab takes over when the first closes, with the newest text, and saves nothing by taking over', async () => {
  const { shelf, clock, first, second } = await twoTabs();
  benchOf(first.desk).actions.setField(['name'], 'Last words');
  await first.desk.actions.flush();
  first.close();
  await clock.pass(0);
  await clock.pass(10_000);
  expect(stateOf(second.desk)).toMatchObject({ follows: false, plan: { name: 'Last words' } });
  expect(shelf.writes).toHaveLength(1);
  expect(benchOf(second.desk).actions.setField(['name'], 'Mine now')).toEqual({ done: true });
  await clock.pass(1000);
  expect(JSON.parse((await shelf.read('k'))!).name).toBe('Mine now');
});

test('a copy taken by the second tab is a document of its own', async () => {
  const { clock, first, second } = await twoTabs();
  await second.desk.actions.takeCopy();
  expect(stateOf(second.desk)).toMatchObject({
    documentKey: 'copy',
    follows: false,
    plan: { name: 'Some plan, copy' },
  });
  benchOf(first.desk).actions.setField(['name'], 'Changed');
  await clock.pass(1000);
  expect(stateOf(second.desk).plan.name).toBe('Some plan, copy');
});

test('a tab that opened another plan meanwhile does not take over the one it left', async () => {
  const { clock, first, second } = await twoTabs();
  await second.desk.actions.openBlank();
  first.close();
  await clock.pass(10_000);
  expect(stateOf(second.desk)).toMatchObject({ documentKey: 'copy', plan: { name: 'New plan' } });
});

test('a tab that opens another plan gives the one it left to the tab that waits', async () => {
  const { clock, first, second } = await twoTabs();
  await first.desk.actions.openBlank();
  await clock.pass(0);
  expect(stateOf(second.desk).follows).toBe(false);
});

test('a plan that could not be opened is not held on to', async () => {
  const { shelf, first, second } = await twoTabs();
  shelf.put('broken', '{');
  await first.desk.actions.openKept('broken');
  expect(first.desk.store.getState().problem?.kind).toBe('cut-short');
  shelf.put('broken', serialisePlan(somePlan));
  await second.desk.actions.openKept('broken');
  expect(stateOf(second.desk)).toMatchObject({ documentKey: 'broken', follows: false });
});
