import type { ShareRefusal } from '../../files/share-link';
import type { Plan } from '../../plan/plan';
import { copyKey } from '../state/copy-key';

/** A plan out of a link with the key of its copy, or why there is none. */
export type ReadShare =
  | { readonly plan: Plan; readonly key: string }
  | { readonly refused: ShareRefusal; readonly path?: string; readonly sentence: string };

/** Reads the signs of a link; what unpacks them is fetched when a first link is opened. */
export async function readShare(signs: string): Promise<ReadShare> {
  const { decodeShare, sharedText } = await import('../../files/share-link');
  const { sha256 } = await import('../../files/sha-256');
  const read = decodeShare(signs);
  if ('refused' in read) return read;
  return { plan: read.plan, key: copyKey(sha256(new TextEncoder().encode(sharedText(read.plan)))) };
}
