import type { DocumentChannel } from '../../../src/ui/storage/document-channel';

interface Waiting {
  readonly name: string;
  readonly call: (lock: Lock | null) => unknown;
  readonly done: () => void;
  readonly signal: AbortSignal | undefined;
}

/** What a browser's tabs share: locks in order of asking, as the Web Locks API says. */
export function createFakeLocks(): LockManager {
  const held = new Set<string>();
  let queue: Waiting[] = [];

  function grant(): void {
    queue = queue.filter((one) => !one.signal?.aborted);
    const next = queue.find((one) => !held.has(one.name));
    if (!next) return;
    queue = queue.filter((one) => one !== next);
    held.add(next.name);
    void Promise.resolve(next.call({ name: next.name, mode: 'exclusive' })).finally(() => {
      held.delete(next.name);
      next.done();
      grant();
    });
  }

  const request = (name: string, options: LockOptions, call: Waiting['call']) =>
    new Promise<void>((done) => {
      if (options.ifAvailable && (held.has(name) || queue.some((one) => one.name === name))) {
        void Promise.resolve(call(null)).then(() => done());
        return;
      }
      queue.push({ name, call, done, signal: options.signal });
      queueMicrotask(grant);
    });
  return { request } as unknown as LockManager;
}

/** Channels of several tabs: each hears what the others tell, later, as messages do. */
export function createFakeChannels(): () => DocumentChannel {
  const tabs: { hears: ((key: string) => void) | null }[] = [];
  return () => {
    const tab: { hears: ((key: string) => void) | null } = { hears: null };
    tabs.push(tab);
    return {
      tell: (key) => {
        for (const other of tabs) if (other !== tab) setTimeout(() => other.hears?.(key));
      },
      hear(call) {
        tab.hears = call;
        return () => {
          tab.hears = null;
        };
      },
    };
  };
}
