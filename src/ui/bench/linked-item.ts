import type { LinkedItem } from '../../sheets/item-link';
import type { Selection } from '../state/selection';

const kinds = { panel: 'panel', run: 'port', circuit: 'circuit' } as const;

/** What a link can open at of what is picked; null where nothing is, or what no link names. */
export function linkedItem(selection: Selection | null): LinkedItem | null {
  if (selection === null || !Object.hasOwn(kinds, selection.kind)) return null;
  return { kind: kinds[selection.kind as keyof typeof kinds], name: selection.name };
}
