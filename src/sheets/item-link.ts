/** What a code on a sheet or a label leads to, under the name that stands on paper: 'A C38 R9', '3B-04', 'D4-11'. */
export interface LinkedItem {
  readonly kind: 'panel' | 'port' | 'circuit';
  readonly name: string;
}

/**
 * The address that opens a plan which the reader's browser keeps, at one of its items: '...#of=0b3a&panel=A-C38-R9'.
 * `address` is that of the page; what stands in it from '#' on is left out. Short, so that its code stays coarse.
 */
export function itemLink(address: string, planId: string, { kind, name }: LinkedItem): string {
  return `${address.replace(/#.*$/s, '')}#of=${planId}&${kind}=${encodeURIComponent(name.replaceAll(' ', '-'))}`;
}
