import type { ChapterId } from '../../calc/chapter';
import { type PageId, pages } from './pages';

/** The page on which a chapter's checks stand. */
export function pageOfChapter(chapter: ChapterId): PageId {
  return pages.find((page) => page.chapters.includes(chapter))?.id ?? 'summary';
}
