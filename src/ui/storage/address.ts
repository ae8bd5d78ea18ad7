import { isPageId, type PageId } from '../state/pages';

/** What the part of the address after '#' says: which document, which page of it, and which panel is picked. */
export interface Address {
  readonly key: string | null;
  readonly page: PageId | null;
  /** Full name of a panel, 'A C38 R9'; written with hyphens, so that a link needs no escapes. */
  readonly panel: string | null;
}

export function readAddress(hash: string): Address {
  const parts = new URLSearchParams(hash.replace(/^#/, ''));
  const page = parts.get('page');
  return {
    key: parts.get('plan') || null,
    page: page !== null && isPageId(page) ? page : null,
    panel: parts.get('panel')?.replaceAll('-', ' ').trim() || null,
  };
}

export function writeAddress(key: string, page: PageId, panel: string | null = null): string {
  const picked = panel === null ? {} : { panel: panel.replaceAll(' ', '-') };
  return `#${new URLSearchParams({ plan: key, page, ...picked })}`;
}
