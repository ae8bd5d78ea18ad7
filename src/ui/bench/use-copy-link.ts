import { useCallback } from 'react';
import { useSay } from './notice-context';

/** Puts the address of the page, with what is picked on it, where it can be pasted from. */
export function useCopyLink(): () => void {
  const say = useSay();
  return useCallback(() => {
    const { href } = location;
    // Without a safe connection the browser has no such place.
    const written = navigator.clipboard?.writeText(href) ?? Promise.reject(new Error('no clipboard'));
    written.then(
      () => say('The link is copied; it opens in this browser.'),
      () => say(`The browser did not let the link be copied: ${href}`),
    );
  }, [say]);
}
