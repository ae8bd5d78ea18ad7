import { emptyBuildLog } from '../plan/build-log';
import { parsePlan, type Refusal } from '../plan/parse-plan';
import type { Plan } from '../plan/plan';
import { serialisePlan } from '../plan/serialise-plan';
import { itemPart, type LinkedItem, withoutHash } from '../sheets/item-link';
import { type PackedForm, packSigns, type SignsRefusal, unpackSigns } from './packed-signs';
import { shareDictionary1 } from './share-dictionary-1';

/** Why a link gives no plan: its signs give no text, or the text is no plan. */
export type ShareRefusal = Refusal | SignsRefusal;

export type SharedPlan =
  | { readonly plan: Plan }
  | { readonly refused: ShareRefusal; readonly path?: string; readonly sentence: string };

/**
 * A longer link is not offered: mail, chats and older browsers cut it (common practice, no source; browsers themselves
 * take 32,000 characters and more, from memory). A file goes its way instead.
 */
export const mostLinkCharacters = 32_000;

const form: PackedForm = { form: 1, dictionary: new TextEncoder().encode(shareDictionary1) };

/** The plan as signs for an address, without the content of its revisions and without its log. The same plan gives the same signs. */
export function encodeShare(plan: Plan): string {
  return packSigns(sharedText(plan), form);
}

/** The address that opens such signs, at an item where one is named. */
export function shareLink(address: string, signs: string, item: LinkedItem | null): string {
  return `${withoutHash(address)}#share=${signs}${item === null ? '' : itemPart(item)}`;
}

/** What a link carries of a plan, as text: what tells two shared plans apart. */
export function sharedText(plan: Plan): string {
  return JSON.stringify(JSON.parse(serialisePlan({ ...plan, revisions: [], log: emptyBuildLog })));
}

/** The plan that signs of an address carry, or a named reason. Never throws. */
export function decodeShare(signs: string): SharedPlan {
  const unpacked = unpackSigns(signs, form);
  return 'refused' in unpacked ? unpacked : parsePlan(unpacked.text);
}
