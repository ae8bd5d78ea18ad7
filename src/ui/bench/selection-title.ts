import type { Selection } from '../state/selection';

const kinds: Readonly<Record<Exclude<Selection['kind'], 'part'>, string>> = {
  panel: 'Panel',
  zone: 'Zone of',
  run: 'Port',
  circuit: 'Circuit',
  column: 'Column',
};

/** What is picked, by what it is and its name: 'Panel A C38 R9', 'Distro 4'. */
export function selectionTitle(selection: Selection): string {
  if (selection.kind !== 'part') return `${kinds[selection.kind]} ${selection.name}`;
  return selection.name.charAt(0).toUpperCase() + selection.name.slice(1);
}
