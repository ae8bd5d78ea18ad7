import { expect, test } from 'vitest';
import { runInStretches } from '../../../src/ui/state/run-in-stretches';

function* countTo(last: number): Generator<number, string> {
  for (let i = 1; i <= last; i++) yield i;
  return 'counted';
}

/** A clock that goes on by `stepMs` whenever it is read. */
function clock(stepMs: number): () => number {
  let ms = 0;
  return () => {
    ms += stepMs;
    return ms;
  };
}

test('runInStretches reports every item once and in order, then answers', async () => {
  const reports: (readonly unknown[])[] = [];
  const ended = await runInStretches(
    countTo(7),
    async (items) => {
      reports.push(items);
    },
    () => false,
    clock(25),
  );
  expect(ended).toEqual({ answer: 'counted' });
  expect(reports.flat()).toEqual([1, 2, 3, 4, 5, 6, 7]);
  expect(reports.length).toBeGreaterThan(1);
});

test('runInStretches takes one step a report where each takes long', async () => {
  const reports: (readonly unknown[])[] = [];
  await runInStretches(
    countTo(3),
    async (items) => {
      reports.push(items);
    },
    () => false,
    clock(1000),
  );
  expect(reports).toEqual([[1], [2], [3]]);
});

test('runInStretches goes no further once it is stopped', async () => {
  let reached = 0;
  const ended = await runInStretches(
    countTo(100),
    async (items) => {
      reached = Number(items.at(-1));
    },
    () => reached >= 2,
    clock(1000),
  );
  expect(ended).toEqual({ stopped: true });
  expect(reached).toBe(2);
});

test('runInStretches of a search without items answers at once', async () => {
  const never = () => Promise.reject(new Error('nothing is to be reported'));
  expect(await runInStretches(countTo(0), never, () => false, clock(1))).toEqual({ answer: 'counted' });
});

test('runInStretches waits for an answer that takes its time', async () => {
  // biome-ignore lint/correctness/useYield: it has no item.
  function* promises(): Generator<number, Promise<string>> {
    return Promise.resolve('later');
  }
  const ended = await runInStretches(
    promises(),
    async () => {},
    () => false,
    clock(1),
  );
  expect(ended).toEqual({ answer: 'later' });
});

test('runInStretches passes on what a search throws', async () => {
  // biome-ignore lint/correctness/useYield: it breaks before its first item.
  function* breaks(): Generator<number, string> {
    throw new Error('broken');
  }
  await expect(
    runInStretches(
      breaks(),
      async () => {},
      () => false,
      clock(1),
    ),
  ).rejects.toThrow('broken');
});
