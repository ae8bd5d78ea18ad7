import { findEntries } from '../../bench/find-entries';
import type { Wired } from '../../state/fault-model-of';
import { findSelection } from '../../state/find-selection';
import { isSameSelection, type Selection } from '../../state/selection';

/** What a typed text may mean behind the wall, the surest first; a name without a letter is looked for on every surface. */
export function findInHand(evaluation: Wired, query: string): readonly Selection[] {
  const text = query.trim();
  if (text === '') return [];
  const exact = findSelection(evaluation, text);
  const onSurfaces = evaluation.surfaces.surfaces.map(({ letter }) => findSelection(evaluation, `${letter} ${text}`));
  const beginning = findEntries(text, evaluation, []).flatMap((entry) =>
    entry.kind === 'pick' ? [entry.selection] : [],
  );
  const found: Selection[] = [];
  for (const selection of [exact, ...onSurfaces, ...beginning]) {
    if (selection && !found.some((one) => isSameSelection(one, selection))) found.push(selection);
  }
  return found;
}
