/** What a scanned code says: a link of ours by its part behind '#', what may be a name of the plan, or anything else. */
export type ReadCode =
  | { readonly kind: 'link'; readonly hash: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'other'; readonly text: string };

/** Keys that links of ours have, whatever address they were made at. */
const keys = ['of', 'share', 'ticks', 'plan', 'panel', 'port', 'circuit'];
/** Longest name of a part of the wiring. */
const nameMost = 60;

/** Reads the text of a code. Nothing but the part behind '#' of a link is ever followed, so no code leads away from here. */
export function readCode(text: string): ReadCode {
  const place = text.indexOf('#');
  const hash = place < 0 ? '' : text.slice(place);
  const parts = new URLSearchParams(hash.slice(1));
  if (keys.some((key) => parts.has(key))) return { kind: 'link', hash };
  const name = text.trim();
  const isName = name !== '' && name.length <= nameMost && /^[\w -]+$/.test(name);
  return isName ? { kind: 'name', name } : { kind: 'other', text };
}
