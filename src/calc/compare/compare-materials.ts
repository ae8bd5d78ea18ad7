import type { MaterialLine } from '../materials/material-result';
import type { Change } from './change';
import { listChanges } from './list-changes';
import { pairThings } from './pair-things';
import type { ThingList } from './thing';

type Counted = Pick<MaterialLine, 'name' | 'needed'>;

/** Lines of the bill whose needed count is another one; a line of which none is needed counts as not there. */
export function compareMaterials(before: readonly Counted[], after: readonly Counted[]): Change[] {
  const old = itemThings(before);
  const now = itemThings(after);
  return listChanges('item', old, now, pairThings(old.things, now.things));
}

function itemThings(lines: readonly Counted[]): ThingList {
  const needed = lines.filter((line) => line.needed > 0);
  return {
    things: needed.map((line) => ({ name: line.name, content: line.name, detail: `${line.needed}` })),
    sayContent: () => [],
    sayDetail: (index) => [{ value: needed[index]!.needed, unit: 'count' }],
  };
}
