import type { KeptState } from '../storage/autosave';
import type { Filed } from '../storage/desk-state';

export interface KeptWords {
  readonly text: string;
  /** Something the person must act on. */
  readonly marked: boolean;
}

/** How the document is kept, in words: in this browser, and in a file. */
export function keptWords(kept: KeptState, follows: boolean, filed: Filed | null, locale: string): KeptWords {
  const clock = new Intl.DateTimeFormat(locale, { hour: 'numeric', minute: '2-digit' });
  // No line breaks between the figures and 'PM'.
  const time = (atMs: number) => clock.format(atMs).replace(/\s/g, '\u00a0');
  const file = filed ? ` In a file ${time(filed.atMs)}.` : '';
  if (follows) return { text: 'Followed from another tab.', marked: false };
  switch (kept.kind) {
    case 'kept':
      return { text: `Kept in this browser ${time(kept.atMs)}.${file}`, marked: false };
    case 'changed':
      return { text: 'Keeping …', marked: false };
    case 'failed':
      return { text: `Not kept in this browser.${file}`, marked: true };
  }
}
