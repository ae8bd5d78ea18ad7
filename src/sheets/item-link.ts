/** What a code on a sheet or a label leads to, under the name that stands on paper: 'A C38 R9', '3B-04', 'D4-11', '3B'. */
export interface LinkedItem {
  readonly kind: 'panel' | 'port' | 'circuit' | 'breakout';
  readonly name: string;
}

/**
 * The address that opens a plan which the reader's browser keeps, at one of its items: '...#of=0b3a&panel=A-C38-R9'.
 * `address` is that of the page; what stands in it from '#' on is left out. Short, so that its code stays coarse.
 */
export function itemLink(address: string, planId: string, item: LinkedItem): string {
  return `${withoutHash(address)}#of=${planId}${itemPart(item)}`;
}

/** The part of a link that names the item to open at: '&panel=A-C38-R9'. */
export function itemPart({ kind, name }: LinkedItem): string {
  return `&${kind}=${encodeURIComponent(name.replaceAll(' ', '-'))}`;
}

/** An address up to what stands after '#'. */
export function withoutHash(address: string): string {
  return address.replace(/#.*$/s, '');
}
