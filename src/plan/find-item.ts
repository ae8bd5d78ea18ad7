import type { Catalogue } from './catalogue';

/** The lists of a catalogue by their names. */
export type CatalogueList = keyof Catalogue;
export type CatalogueItem = Catalogue[CatalogueList][number];

/** An item and where it stands. */
export interface FoundItem {
  readonly list: CatalogueList;
  readonly place: number;
  readonly item: CatalogueItem;
}

/** The item of this id in whichever list it stands; undefined where there is none. */
export function findItem(catalogue: Catalogue, itemId: string): FoundItem | undefined {
  for (const list of Object.keys(catalogue) as CatalogueList[]) {
    const items: readonly CatalogueItem[] = catalogue[list];
    const place = items.findIndex(({ id }) => id === itemId);
    if (place >= 0) return { list, place, item: items[place]! };
  }
  return undefined;
}
