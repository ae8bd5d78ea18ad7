import { emptyBuildLog } from '../plan/build-log';
import { parsePlan, type Refusal } from '../plan/parse-plan';
import type { Plan } from '../plan/plan';
import { scanJsonText } from '../plan/scan-json-text';
import { serialisePlan } from '../plan/serialise-plan';
import { itemPart, type LinkedItem, withoutHash } from '../sheets/item-link';
import { packLists, unpackLists } from './packed-lists';
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
  const { names, existingWiring, ...rest } = JSON.parse(sharedText(plan)) as Plan;
  // At the end: what stands there breaks no match with the dictionary.
  return packSigns(JSON.stringify({ ...rest, ...packLists({ names, existingWiring }) }), form);
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
  return 'refused' in unpacked ? unpacked : parsePlan(withLists(unpacked.text));
}

/** The text of a plan with its lists as a file has them; the text as it is where it has no such lists. */
function withLists(text: string): string {
  // What is nested without end would end the program that reads it.
  if (scanJsonText(text).deepest > mostDepth) return text;
  try {
    const document = JSON.parse(text) as Plan;
    const lists = unpackLists(document);
    return lists === null ? text : JSON.stringify({ ...document, ...lists });
  } catch {
    return text;
  }
}

/** Deeper than a plan is, and far from what a reader takes. */
const mostDepth = 64;
