import type { PageItem } from './page';
import type { PageShape } from './page-shape';

/** A page before its number is known: all but frame and title block. */
export interface PageDraft {
  readonly shape: PageShape;
  readonly items: readonly PageItem[];
  /** '1:50'; null where nothing is drawn to scale. */
  readonly scale: string | null;
}
