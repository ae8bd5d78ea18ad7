import { createStore, type StoreApi } from 'zustand/vanilla';

/** How the page stands without a network. */
export interface OfflineState {
  /** Everything that the page consists of is kept on this device. */
  readonly isReady: boolean;
  /** A newer version is fetched and waits to be taken. */
  readonly hasNewVersion: boolean;
}

/** What one hears from the browser about the kept page, and asks of it. */
export interface OfflineLine {
  addEventListener(type: OfflineEvent, listener: (event: { readonly isUpdate?: boolean | undefined }) => void): void;
  register(): Promise<unknown>;
  /** Looks whether there is a newer version. */
  update(): Promise<void>;
  /** Lets the newer version take over. */
  messageSkipWaiting(): void;
}

/** waiting: a newer version is there; activated: this one is kept; controlling: another version than at the start serves the page. */
type OfflineEvent = 'waiting' | 'activated' | 'controlling';

export interface OfflineParts {
  readonly openLine: () => Promise<OfflineLine>;
  /** Whether the page came out of what is kept on this device. */
  readonly isKept: boolean;
  /** Writes what waits to be written. */
  readonly flush: () => Promise<void>;
  readonly reload: () => void;
  readonly now: () => number;
}

export interface Offline {
  readonly store: StoreApi<OfflineState>;
  /** Begins to keep the page. A browser that cannot is no fault: the page then needs the network. */
  start(): Promise<void>;
  /** Looks for a newer version, at most once an hour. */
  look(): void;
  /** Writes what waits, lets the newer version take over and loads the page again. */
  takeNewVersion(): Promise<void>;
}

const hourMs = 3_600_000;

/** Keeps the page on the device, and says when a newer version is there; it is taken when somebody says so, never before. */
export function createOffline({ openLine, isKept, flush, reload, now }: OfflineParts): Offline {
  const store = createStore<OfflineState>(() => ({ isReady: isKept, hasNewVersion: false }));
  let line: OfflineLine | null = null;
  let lookedAtMs = now();
  let isAsked = false;
  /** True where another tab let the newer version take over already. */
  let isTaken = false;

  return {
    store,
    async start() {
      try {
        const opened = await openLine();
        opened.addEventListener('waiting', () => store.setState({ hasNewVersion: true }));
        opened.addEventListener('activated', () => store.setState({ isReady: true }));
        opened.addEventListener('controlling', ({ isUpdate }) => {
          if (isAsked) reload();
          else if (isUpdate === true) {
            isTaken = true;
            store.setState({ hasNewVersion: true });
          }
        });
        await opened.register();
        line = opened;
      } catch {
        // Nothing is kept; whatever is asked for comes over the network.
      }
    },
    look() {
      if (line === null || now() - lookedAtMs < hourMs) return;
      lookedAtMs = now();
      line.update().catch(() => undefined);
    },
    async takeNewVersion() {
      await flush();
      isAsked = true;
      if (line === null || isTaken) reload();
      else line.messageSkipWaiting();
    },
  };
}
