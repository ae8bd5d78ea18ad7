import { useCallback } from 'react';
import type { PageId } from '../state/pages';
import { useBench } from '../state/use-bench';
import { writeAddress } from '../storage/address';

/** Addresses of the open document's pages: a link can be opened in another tab, and the browser's back goes back. */
export function usePageHref(): (page: PageId) => string {
  const key = useBench((state) => state.documentKey);
  return useCallback((page) => writeAddress(key, page), [key]);
}
