import { isPageId, type PageId } from '../state/pages';

/** What the part of the address after '#' says. */
export interface Address {
  /** Which document of this browser. */
  readonly key: string | null;
  readonly page: PageId | null;
  /** Full name of what is picked, 'A C38 R9', '3B-04', 'D4-11' or '3B'; a panel's is written with hyphens, so that a link needs no escapes. */
  readonly sought: string | null;
  /** Signs that carry a whole plan. */
  readonly share: string | null;
  /** Id of a plan, whatever document holds it. */
  readonly of: string | null;
  /** Signs that carry ticks for a plan. */
  readonly ticks: string | null;
}

export function readAddress(hash: string): Address {
  const parts = new URLSearchParams(hash.replace(/^#/, ''));
  const page = parts.get('page');
  const panel = parts.get('panel')?.replaceAll('-', ' ').trim();
  return {
    key: parts.get('plan') || null,
    page: page !== null && isPageId(page) ? page : null,
    sought: panel || parts.get('port') || parts.get('circuit') || parts.get('breakout') || null,
    share: parts.get('share'),
    of: parts.get('of') || null,
    ticks: parts.get('ticks'),
  };
}

export function writeAddress(key: string, page: PageId, panel: string | null = null): string {
  const picked = panel === null ? {} : { panel: panel.replaceAll(' ', '-') };
  return `#${new URLSearchParams({ plan: key, page, ...picked })}`;
}
