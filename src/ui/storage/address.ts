import { isPageId, type PageId } from '../state/pages';

/** What the part of the address after '#' says: which document, and which page of it. */
export interface Address {
  readonly key: string | null;
  readonly page: PageId | null;
}

export function readAddress(hash: string): Address {
  const parts = new URLSearchParams(hash.replace(/^#/, ''));
  const page = parts.get('page');
  return { key: parts.get('plan') || null, page: page !== null && isPageId(page) ? page : null };
}

export function writeAddress(key: string, page: PageId): string {
  return `#${new URLSearchParams({ plan: key, page })}`;
}
