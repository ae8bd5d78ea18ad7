import type { Desk } from './create-desk';

/** Writes what waits when the page is hidden or left, asks the browser once to keep what is stored, and warns before a page
 *  is left whose plan is nowhere kept. */
export function guardUnload({ store, actions }: Desk): void {
  const flush = () => void actions.flush();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') flush();
  });
  window.addEventListener('pagehide', flush);
  window.addEventListener('beforeunload', (event) => {
    const { kept, filed, bench } = store.getState();
    if (!bench || kept.kind === 'kept' || bench.store.getState().follows) return;
    flush();
    if (filed?.plan !== bench.store.getState().plan) event.preventDefault();
  });
  const stop = store.subscribe(({ bench }) => {
    if (!bench) return;
    stop();
    const stopChanges = bench.store.subscribe((state, before) => {
      if (state.plan === before.plan || state.loads !== before.loads) return;
      stopChanges();
      navigator.storage?.persist?.().catch(() => undefined);
    });
    bench.store.subscribe((state, before) => {
      const { view, from, tint, follows } = state.drawing;
      if (state.drawing !== before.drawing) actions.remember({ drawing: { view, from, tint, follows } });
    });
  });
}
