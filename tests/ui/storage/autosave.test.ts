import { expect, test } from 'vitest';
import type { Plan } from '../../../src/plan/plan';
import { createAutosave, type KeptState } from '../../../src/ui/storage/autosave';
import { createFakeClock } from './fake-clock';
import { createMemoryShelf } from './memory-shelf';

const planCalled = (name: string) => ({ name, revision: 'A' }) as Plan;

function setUp() {
  const shelf = createMemoryShelf();
  const clock = createFakeClock();
  const states: KeptState[] = [];
  const told: string[] = [];
  const autosave = createAutosave({
    shelf,
    ...clock,
    serialise: (plan) => plan.name,
    onState: (state) => states.push(state),
    onWritten: (key) => told.push(key),
  });
  return { shelf, clock, states, told, autosave };
}

test('a change is written within a second, once, and told', async () => {
  const { shelf, clock, states, told, autosave } = setUp();
  autosave.changed('k', planCalled('one'));
  expect(states).toEqual([{ kind: 'changed' }]);
  await clock.pass(1000);
  expect(shelf.writes).toEqual([['k', 'one']]);
  expect(told).toEqual(['k']);
  expect(states.at(-1)).toMatchObject({ kind: 'kept' });
  await clock.pass(60_000);
  expect(shelf.writes).toHaveLength(1);
});

test('changes that go on do not put the write off: within every second the newest is written', async () => {
  const { shelf, clock, autosave } = setUp();
  for (let tenth = 0; tenth < 50; tenth++) {
    autosave.changed('k', planCalled(`${tenth}`));
    await clock.pass(100);
    const newest = Number(shelf.writes.at(-1)?.[1] ?? 0);
    expect(tenth - newest).toBeLessThan(10);
  }
});

test('a change during a write is written after it', async () => {
  const { shelf, clock, autosave } = setUp();
  const write = shelf.write;
  let letGo: () => void = () => undefined;
  shelf.write = async (entry, text) => {
    await new Promise<void>((resolve) => {
      letGo = resolve;
    });
    await write(entry, text);
  };
  autosave.changed('k', planCalled('one'));
  await clock.pass(300);
  autosave.changed('k', planCalled('two'));
  letGo();
  await clock.pass(0);
  letGo();
  await clock.pass(0);
  expect(shelf.writes.map(([, text]) => text)).toEqual(['one', 'two']);
});

test('flush writes at once and waits for it', async () => {
  const { shelf, autosave } = setUp();
  autosave.changed('k', planCalled('one'));
  await autosave.flush();
  expect(shelf.writes).toEqual([['k', 'one']]);
});

test('flush with nothing to write does nothing', async () => {
  const { shelf, autosave } = setUp();
  await autosave.flush();
  expect(shelf.writes).toEqual([]);
});

test.each(['full', 'refused'] as const)(
  'storage that is %s is said, the plan stays, and it is tried again',
  async (trouble) => {
    const { shelf, clock, states, autosave } = setUp();
    shelf.refuse(trouble);
    autosave.changed('k', planCalled('one'));
    await clock.pass(1000);
    expect(states.at(-1)).toMatchObject({ kind: 'failed', trouble });
    autosave.changed('k', planCalled('two'));
    // The warning stands until something is kept: it does not flicker with each key.
    expect(states.at(-1)).toMatchObject({ kind: 'failed' });
    shelf.refuse(null);
    await clock.pass(10_000);
    expect(shelf.writes).toEqual([['k', 'two']]);
    expect(states.at(-1)).toMatchObject({ kind: 'kept' });
  },
);

test('a write that failed is tried again by itself', async () => {
  const { shelf, clock, autosave } = setUp();
  shelf.refuse('full');
  autosave.changed('k', planCalled('one'));
  await clock.pass(1000);
  shelf.refuse(null);
  await clock.pass(5000);
  expect(shelf.writes).toEqual([['k', 'one']]);
});

test('a plan that cannot be written out counts as failed', async () => {
  const { clock, states } = setUp();
  const shelf = createMemoryShelf();
  const autosave = createAutosave({
    shelf,
    ...clock,
    serialise: () => {
      throw new Error('not a valid plan');
    },
    onState: (state) => states.push(state),
    onWritten: () => undefined,
  });
  autosave.changed('k', planCalled('one'));
  await autosave.flush();
  expect(states.at(-1)).toMatchObject({ kind: 'failed', reason: 'not a valid plan' });
});

test('two documents that wait are both written', async () => {
  const { shelf, autosave } = setUp();
  autosave.changed('a', planCalled('one'));
  autosave.changed('b', planCalled('two'));
  await autosave.flush();
  expect(shelf.writes).toEqual([
    ['a', 'one'],
    ['b', 'two'],
  ]);
});
