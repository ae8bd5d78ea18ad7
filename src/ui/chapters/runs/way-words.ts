import { wayInWords } from '../../../calc/runs/way-in-words';
import type { WayOfWiring } from '../../../plan/hand-change';

/** A way of wiring as a crew says it, its figures filled in. */
export function wayWords(way: WayOfWiring): string {
  const { words, values } = wayInWords(way);
  return words.replace(/\{(\w+)\}/g, (_token, name: string) => String(values[name]?.value ?? '')).replace(/,$/, '');
}
