import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import type { PageId } from '../state/pages';

/** Pages with a component of their own, loaded when first opened. A page that is not named here shows what its chapters
 *  computed: figures, checks and working. */
export const chapterRegistry: Readonly<Partial<Record<PageId, LazyExoticComponent<ComponentType>>>> = {
  summary: lazy(async () => ({ default: (await import('../chapters/summary/SummaryPage')).SummaryPage })),
};
