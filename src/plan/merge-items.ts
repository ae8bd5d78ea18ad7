import type { Catalogue } from './catalogue';
import { type CatalogueItem, type CatalogueList, findItem } from './find-item';
import { sameValue } from './same-value';

/** The catalogue with the items taken, and under which id each of them stands there. */
export interface MergedItems {
  readonly catalogue: Catalogue;
  readonly idOf: ReadonlyMap<string, string>;
}

/** Lists in the order in which they lean on each other: breakouts before the processors that use them, these before panels. */
const lists: readonly CatalogueList[] = ['breakouts', 'processors', 'panels', 'distros', 'nodes', 'cables'];

/**
 * Takes items of another catalogue, and those that they lean on, into `own`. One that is there already, whatever its id, is not
 * taken twice; one whose id means something else here gets an id of its own, and references to it follow.
 */
export function mergeItems(own: Catalogue, other: Catalogue, itemIds: readonly string[]): MergedItems {
  const wanted = withNeeded(other, itemIds);
  const idOf = new Map<string, string>();
  let catalogue = own;
  for (const list of lists) {
    for (const original of other[list] as readonly CatalogueItem[]) {
      if (!wanted.has(original.id)) continue;
      const item = withReferences(original, idOf);
      const here = catalogue[list] as readonly CatalogueItem[];
      const twin = here.find((mine) => sameValue({ ...mine, id: item.id }, item));
      const id = twin?.id ?? freeId(catalogue, item.id);
      idOf.set(item.id, id);
      if (twin === undefined) catalogue = { ...catalogue, [list]: [...here, { ...item, id }] };
    }
  }
  return { catalogue, idOf };
}

/** The ids asked for, and those of what these items refer to in the same catalogue. */
function withNeeded(catalogue: Catalogue, itemIds: readonly string[]): ReadonlySet<string> {
  const wanted = new Set<string>();
  const waiting = [...itemIds];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    const item = findItem(catalogue, id)?.item;
    if (item === undefined || wanted.has(id)) continue;
    wanted.add(id);
    waiting.push(...referencesOf(item));
  }
  return wanted;
}

function referencesOf(item: CatalogueItem): readonly string[] {
  if ('data' in item) return item.data.drivenBy.map(({ processorId }) => processorId);
  return 'outlets' in item && item.outlets.kind === 'breakouts' ? [item.outlets.breakoutId] : [];
}

function withReferences(item: CatalogueItem, idOf: ReadonlyMap<string, string>): CatalogueItem {
  const now = (id: string) => idOf.get(id) ?? id;
  if ('data' in item) {
    const drivenBy = item.data.drivenBy.map((pair) => ({ ...pair, processorId: now(pair.processorId) }));
    return { ...item, data: { ...item.data, drivenBy } };
  }
  if ('outlets' in item && item.outlets.kind === 'breakouts') {
    return { ...item, outlets: { ...item.outlets, breakoutId: now(item.outlets.breakoutId) } };
  }
  return item;
}

/** The id itself where it is free, else with the first number behind it that makes it so. */
function freeId(catalogue: Catalogue, id: string): string {
  let free = id;
  for (let n = 2; findItem(catalogue, free) !== undefined; n += 1) free = `${id.slice(0, 57)}-${n}`;
  return free;
}
