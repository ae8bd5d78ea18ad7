import { useCallback, useSyncExternalStore } from 'react';

/** Whether a media query holds now. */
export function useMedia(query: string): boolean {
  const subscribe = useCallback(
    (call: () => void) => {
      const list = matchMedia(query);
      list.addEventListener('change', call);
      return () => list.removeEventListener('change', call);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => matchMedia(query).matches);
}
