import { parseTickList, type TickListRefusal } from '../plan/parse-tick-list';
import type { TickList } from '../plan/tick-list';
import { packSigns, type SignsRefusal, unpackSigns } from './packed-signs';
import { tickDictionary1 } from './tick-dictionary-1';

/** Why a link gives no ticks: its signs give no text, or the text is no list of ticks. */
export type TickLinkRefusal = TickListRefusal | SignsRefusal;

export type LinkedTicks =
  | { readonly list: TickList }
  | { readonly refused: TickLinkRefusal; readonly path?: string; readonly sentence: string };

const form = { form: 1, dictionary: new TextEncoder().encode(tickDictionary1) };

/** Most signs that a message carries without being cut (common practice, no source); what is longer goes by a file. */
const mostSigns = 8000;

/** Ticks as signs for an address; null where they are too many for a link. The same ticks give the same signs. */
export function encodeTicks(list: TickList): string | null {
  const signs = packSigns(JSON.stringify(list), form);
  return signs.length > mostSigns ? null : signs;
}

/** The ticks that signs of an address carry, or a named reason. Never throws. */
export function decodeTicks(signs: string): LinkedTicks {
  const unpacked = unpackSigns(signs, form);
  return 'refused' in unpacked ? unpacked : parseTickList(unpacked.text);
}
