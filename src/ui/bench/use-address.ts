import { useEffect } from 'react';
import { pageById } from '../state/pages';
import { useBench, useBenchStore } from '../state/use-bench';
import { readAddress, writeAddress } from '../storage/address';
import { useDeskActions } from '../storage/use-desk';

/** Keeps the address and the bench together: pages turn with the browser's back and forward, and a link opens its page and picks its panel. */
export function useAddress(): void {
  const key = useBench((state) => state.documentKey);
  const page = useBench((state) => state.page);
  const panel = useBench(({ selection }) => (selection?.kind === 'panel' ? selection.name : null));
  const name = useBench((state) => state.plan.name);
  const { store } = useBenchStore();
  const desk = useDeskActions();

  useEffect(() => {
    const address = writeAddress(key, page, panel);
    if (location.hash === address) return;
    const before = readAddress(location.hash);
    // A page turned is a step that the browser goes back by; what is picked on it only rides along.
    if (before.key === key && before.page !== null && before.page !== page) history.pushState(null, '', address);
    else history.replaceState(null, '', address);
  }, [key, page, panel]);

  useEffect(() => {
    const visit = async () => {
      await desk.visit(location.hash);
      // A link that led to what was open already leaves the bench as it is, and itself in the address.
      const { documentKey, page: now, selection } = store.getState();
      const { share, of, ticks } = readAddress(location.hash);
      if (share === null && of === null && ticks === null) return;
      const picked = selection?.kind === 'panel' ? selection.name : null;
      history.replaceState(null, '', writeAddress(documentKey, now, picked));
    };
    window.addEventListener('hashchange', visit);
    return () => window.removeEventListener('hashchange', visit);
  }, [desk, store]);

  useEffect(() => {
    document.title = `${name || 'Plan'}: ${pageById(page).title}, Voussoir`;
  }, [name, page]);
}
