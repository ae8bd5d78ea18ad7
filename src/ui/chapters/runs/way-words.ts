import { wayInWords } from '../../../calc/runs/way-in-words';
import type { WayOfWiring } from '../../../plan/hand-change';

/** A way of wiring as a crew says it, its figures filled in. */
export function wayWords(way: WayOfWiring): string {
  const { words, values } = wayInWords(way);
  return words.replace(/\{(\w+)\}/g, (_token, name: string) => String(values[name]?.value ?? '')).replace(/,$/, '');
}

/** The same, short enough for a table. */
export function wayInShort(way: WayOfWiring): string {
  switch (way.kind) {
    case 'columns':
      return 'Whole columns';
    case 'folded':
      return `Folded, ${way.wide} wide`;
    case 'split':
      return `Split above row ${way.aboveRow}, ${way.wide} wide`;
    case 'rows':
      return 'Rows';
    case 'free':
      return 'Found by search';
  }
}
