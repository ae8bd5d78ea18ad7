import type { WayOfWiring } from '../../plan/hand-change';

/** Equal ways have equal keys. */
export function wayKey(way: WayOfWiring): string {
  if (way.kind === 'folded') return `folded ${way.wide}`;
  return way.kind === 'split' ? `split ${way.aboveRow} ${way.wide}` : way.kind;
}
