import { expect, test } from 'vitest';
import { createOffline, type OfflineLine } from '../../../src/ui/storage/create-offline';

const hourMs = 3_600_000;

/** A page whose browser says what the test tells it to say, and the calls that reached it in their order. */
function fakePage({ refuses = false, isKept = false } = {}) {
  const calls: string[] = [];
  const listeners = new Map<string, (event: { isUpdate?: boolean }) => void>();
  let now = 0;
  const line: OfflineLine = {
    addEventListener: (type, listener) => listeners.set(type, listener),
    register: async () => calls.push('register'),
    update: async () => {
      calls.push('update');
    },
    messageSkipWaiting: () => calls.push('take over'),
  };
  const offline = createOffline({
    openLine: async () => {
      if (refuses) throw new Error('no store here');
      return line;
    },
    isKept,
    flush: async () => {
      calls.push('flush');
    },
    reload: () => calls.push('reload'),
    now: () => now,
  });
  return {
    offline,
    calls,
    state: offline.store.getState,
    hear: (type: string, event: { isUpdate?: boolean } = {}) => listeners.get(type)?.(event),
    pass: (ms: number) => {
      now += ms;
    },
  };
}

test('a first visit is ready once the page is kept, and nothing is offered', async () => {
  const { offline, state, hear } = fakePage();
  await offline.start();
  expect(state()).toEqual({ isReady: false, hasNewVersion: false });
  hear('activated');
  hear('controlling', { isUpdate: false });
  expect(state()).toEqual({ isReady: true, hasNewVersion: false });
});

test('a newer version is offered and nothing is loaded again until somebody takes it', async () => {
  const { offline, calls, state, hear } = fakePage({ isKept: true });
  await offline.start();
  hear('waiting');
  expect(state()).toEqual({ isReady: true, hasNewVersion: true });
  expect(calls).toEqual(['register']);
  await offline.takeNewVersion();
  expect(calls).toEqual(['register', 'flush', 'take over']);
  hear('controlling', { isUpdate: true });
  expect(calls).toEqual(['register', 'flush', 'take over', 'reload']);
});

test('a version that another tab took is offered here, and loaded at once when it is taken', async () => {
  const { offline, calls, state, hear } = fakePage({ isKept: true });
  await offline.start();
  hear('controlling', { isUpdate: true });
  expect(state().hasNewVersion).toBe(true);
  expect(calls).toEqual(['register']);
  await offline.takeNewVersion();
  expect(calls).toEqual(['register', 'flush', 'reload']);
});

test('look asks for a newer version once an hour at most', async () => {
  const { offline, calls, pass } = fakePage();
  offline.look();
  await offline.start();
  pass(hourMs - 1);
  offline.look();
  expect(calls).toEqual(['register']);
  pass(1);
  offline.look();
  offline.look();
  expect(calls).toEqual(['register', 'update']);
});

test('a browser that keeps no page is no fault', async () => {
  const { offline, calls, state } = fakePage({ refuses: true });
  await offline.start();
  expect(state()).toEqual({ isReady: false, hasNewVersion: false });
  await offline.takeNewVersion();
  expect(calls).toEqual(['flush', 'reload']);
});
