import type { Evaluation } from '../../calc/evaluation';
import { findSelection } from '../state/find-selection';
import { type PageId, pages } from '../state/pages';
import type { Selection } from '../state/selection';

/** What a search leads to. */
export type FoundEntry =
  | { readonly kind: 'page'; readonly id: string; readonly label: string; readonly page: PageId }
  | { readonly kind: 'pick'; readonly id: string; readonly label: string; readonly selection: Selection }
  | { readonly kind: 'command'; readonly id: string; readonly label: string };

const kinds: Readonly<Record<Selection['kind'], string>> = {
  panel: 'Panel',
  zone: 'Zone of',
  run: 'Port',
  circuit: 'Circuit',
  column: 'Column',
};

/** How many ports and circuits a search lists at most. */
const listMost = 8;

function matches(text: string, words: readonly string[]): boolean {
  const low = text.toLowerCase();
  return words.every((word) => low.includes(word));
}

/** What a typed text may mean, the surest first: a name in the stage, a page, a command, ports and circuits that begin so. */
export function findEntries(
  query: string,
  evaluation: Pick<Evaluation, 'surfaces' | 'zones' | 'runs' | 'power'>,
  commands: readonly string[],
): readonly FoundEntry[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  const found: FoundEntry[] = [];
  const pick = (selection: Selection | null) => {
    if (!selection || found.some((entry) => entry.id === `${selection.kind} ${selection.name}`)) return;
    const label = `${kinds[selection.kind]} ${selection.name}`;
    found.push({ kind: 'pick', id: `${selection.kind} ${selection.name}`, label, selection });
  };
  if (words.length > 0) pick(findSelection(evaluation, query));
  for (const page of pages) {
    if (matches(page.title, words))
      found.push({ kind: 'page', id: `page ${page.id}`, label: page.title, page: page.id });
  }
  for (const label of commands) {
    if (matches(label, words)) found.push({ kind: 'command', id: `command ${label}`, label });
  }
  const start = query.trim().toUpperCase();
  if (start.length > 0) {
    const ports = evaluation.runs.results.runs.map((run) => run.port);
    const circuits = evaluation.power.results.circuits.map((circuit) => circuit.name);
    for (const name of [...ports, ...circuits].filter((one) => one.startsWith(start)).slice(0, listMost)) {
      pick(findSelection(evaluation, name));
    }
  }
  return found;
}
