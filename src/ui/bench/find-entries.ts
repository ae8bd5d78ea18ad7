import { culpritName } from '../../calc/faults/culprit-words';
import { culpritsOf } from '../../calc/faults/fault-model';
import { faultModelOf, type Wired } from '../state/fault-model-of';
import { findSelection } from '../state/find-selection';
import { type PageId, pages } from '../state/pages';
import type { Selection } from '../state/selection';
import { selectionOfCulprit } from '../state/selection-of-culprit';
import { selectionTitle } from './selection-title';

/** What a search leads to. */
export type FoundEntry =
  | { readonly kind: 'page'; readonly id: string; readonly label: string; readonly page: PageId }
  | { readonly kind: 'pick'; readonly id: string; readonly label: string; readonly selection: Selection }
  | { readonly kind: 'command'; readonly id: string; readonly label: string };

/** Kinds of part of which a search lists those whose names, or the tags at the end of these, begin as typed. */
const listed = ['node', 'processor', 'breakout', 'port', 'distro', 'circuit', 'leg', 'distro-leg'] as const;
/** How many of one kind a search lists at most. */
const listMost = 8;

function matches(text: string, words: readonly string[]): boolean {
  const low = text.toLowerCase();
  return words.every((word) => low.includes(word));
}

/** Parts of the wiring whose name or tag begins with a text in capitals: 'DIST', 'PORT 3', '3B', 'N'. */
function partsBeginning(evaluation: Wired, start: string): readonly Selection[] {
  const model = faultModelOf(evaluation);
  return listed.flatMap((kind) => {
    const found: Selection[] = [];
    for (const culprit of culpritsOf(model, kind)) {
      const name = culpritName(model, culprit).toUpperCase();
      const tag = name.slice(name.indexOf(' ') + 1);
      if (name.startsWith(start) || tag.startsWith(start)) found.push(selectionOfCulprit(evaluation, culprit));
      if (found.length === listMost) break;
    }
    return found;
  });
}

/** What a typed text may mean, the surest first: a name in the stage, a page, a command, parts of the wiring that begin so. */
export function findEntries(query: string, evaluation: Wired, commands: readonly string[]): readonly FoundEntry[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  const found: FoundEntry[] = [];
  const pick = (selection: Selection | null) => {
    if (!selection || found.some((entry) => entry.id === `${selection.kind} ${selection.name}`)) return;
    const label = selectionTitle(selection);
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
    for (const selection of partsBeginning(evaluation, start)) pick(selection);
  }
  return found;
}
