/** The right to write a document. Only one tab holds it at a time. */
export interface DocumentLock {
  /** Asks for the document; `onHeld` is called once this tab may write, at once or when the tab before it closes.
   *  Resolves when it is known whether that is at once. The answer gives the right back, or stops waiting for it. */
  claim(key: string, onHeld: () => void): Promise<{ readonly held: boolean; readonly release: () => void }>;
}

/** One writer a document by the browser's locks; they are freed when a tab closes or crashes. */
export function createWebLock(locks: LockManager): DocumentLock {
  return {
    claim(key, onHeld) {
      const name = `voussoir document ${key}`;
      let release: () => void = () => undefined;
      const released = new Promise<void>((resolve) => {
        release = resolve;
      });
      const hold = () => {
        onHeld();
        return released;
      };
      const waiting = new AbortController();
      const giveBack = () => {
        waiting.abort();
        release();
      };
      return new Promise((resolve) => {
        const request = locks.request(name, { ifAvailable: true }, (lock) => {
          resolve({ held: lock !== null, release: giveBack });
          if (lock) return hold();
          locks.request(name, { signal: waiting.signal }, hold).catch(() => undefined);
          return undefined;
        });
        request.catch(() => resolve({ held: false, release: giveBack }));
      });
    },
  };
}

/** For a browser without locks: every tab may write. */
export const unguardedLock: DocumentLock = {
  claim(_key, onHeld) {
    onHeld();
    return Promise.resolve({ held: true, release: () => undefined });
  },
};
