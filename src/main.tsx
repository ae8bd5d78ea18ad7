import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { createEvaluator } from './calc/evaluate';
import { emptyPlan } from './plan/empty-plan';
import { parsePlan } from './plan/parse-plan';
import { serialisePlan } from './plan/serialise-plan';
import { App } from './ui/bench/App';
import { createBenchStore } from './ui/state/create-bench-store';
import { estimatePanelCount } from './ui/state/estimate-panel-count';
import { startEvaluationWorker } from './ui/state/start-evaluation-worker';
import { createDesk } from './ui/storage/create-desk';
import { createOffline } from './ui/storage/create-offline';
import { createDocumentChannel } from './ui/storage/document-channel';
import { createWebLock, unguardedLock } from './ui/storage/document-lock';
import { guardUnload } from './ui/storage/guard-unload';
import { createIndexedDbShelf } from './ui/storage/indexed-db-shelf';
import { loadSample } from './ui/storage/load-sample';
import { findLocalStore } from './ui/storage/local-store';
import { readShare } from './ui/storage/read-share';
import { readTicks } from './ui/storage/read-ticks';
import { readViewMemory } from './ui/storage/view-memory';
import './ui/styles/index.css';

/** Panels that are evaluated between two frames; more go to a worker. */
const panelsHere = 20_000;

const locale = navigator.language;
const localStore = findLocalStore();
const newKey = () => crypto.randomUUID();

const desk = createDesk({
  shelf: createIndexedDbShelf('voussoir'),
  lock: navigator.locks ? createWebLock(navigator.locks) : unguardedLock,
  channel: createDocumentChannel(new BroadcastChannel('voussoir')),
  parse: parsePlan,
  serialise: serialisePlan,
  readShare,
  readTicks,
  sample: loadSample,
  blank: () => emptyPlan({ id: newKey(), name: 'New plan', lengths: locale === 'en-US' ? 'feet' : 'metric' }),
  newKey,
  localStore,
  now: Date.now,
  wait(ms, call) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
  createBench: (first) =>
    createBenchStore(
      {
        createEvaluator,
        startLine: startEvaluationWorker,
        isLarge: (plan) => estimatePanelCount(plan) > panelsHere,
        now: Date.now,
        locale,
        drawing: { ...readViewMemory(localStore).drawing, surfaceId: null, wires: false },
      },
      first,
    ),
});

/** Only what is built is kept on the device: while one builds it, nothing old may come out of a store. */
const offline =
  import.meta.env.PROD && 'serviceWorker' in navigator
    ? createOffline({
        openLine: async () => new (await import('workbox-window')).Workbox('./sw.js'),
        isKept: navigator.serviceWorker.controller !== null,
        flush: desk.actions.flush,
        reload: () => location.reload(),
        now: Date.now,
      })
    : null;
void offline?.start();
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') offline?.look();
});

guardUnload(desk);
void desk.actions.start(location.hash);

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <App desk={desk} offline={offline} />
  </StrictMode>,
);
