import { parseTickList, type TickListRefusal } from '../plan/parse-tick-list';
import type { TickList } from '../plan/tick-list';
import { withoutHash } from '../sheets/item-link';
import { packSigns, type SignsRefusal, unpackSigns } from './packed-signs';
import { mostLinkCharacters } from './share-link';
import { tickDictionary1 } from './tick-dictionary-1';

/** Why a link gives no ticks: its signs give no text, or the text is no list of ticks. */
export type TickLinkRefusal = TickListRefusal | SignsRefusal;

export type LinkedTicks =
  | { readonly list: TickList }
  | { readonly refused: TickLinkRefusal; readonly path?: string; readonly sentence: string };

const form = { form: 1, dictionary: new TextEncoder().encode(tickDictionary1) };

/**
 * The address that brings ticks to the plan they belong to; null where they are too many for a link. `address` is that of the
 * page. The same ticks give the same link.
 */
export function tickLink(address: string, list: TickList): string | null {
  const link = `${withoutHash(address)}#ticks=${packSigns(JSON.stringify(list), form)}`;
  return link.length > mostLinkCharacters ? null : link;
}

/** The ticks that signs of an address carry, or a named reason. Never throws. */
export function decodeTicks(signs: string): LinkedTicks {
  const unpacked = unpackSigns(signs, form);
  return 'refused' in unpacked ? unpacked : parseTickList(unpacked.text);
}
