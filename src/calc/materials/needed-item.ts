import type { MaterialLine } from './material-result';

/** One thing that the plan needs, before spares and stock. */
export interface NeededItem
  extends Pick<
    MaterialLine,
    'itemId' | 'group' | 'name' | 'needed' | 'massKgEach' | 'priceEach' | 'leadDays' | 'countedAs'
  > {}

/** What materials take of a catalogue item that is neither panel nor cable. */
export interface GearPurchase {
  readonly id: string;
  readonly name: string;
  readonly massKg: number;
  readonly purchase: { readonly price: number | null; readonly leadDays: number | null };
}

/** An item of the catalogue by its id; one that is not there is named by its id and has no mass and no price. */
export function neededItem(
  list: readonly GearPurchase[],
  counted: { readonly itemId: string; readonly count: number },
  group: MaterialLine['group'],
  countedAs: string,
): NeededItem {
  const item = list.find(({ id }) => id === counted.itemId);
  return {
    itemId: counted.itemId,
    group,
    name: item?.name ?? counted.itemId,
    needed: counted.count,
    massKgEach: item?.massKg ?? 0,
    priceEach: item?.purchase.price ?? null,
    leadDays: item?.purchase.leadDays ?? null,
    countedAs,
  };
}
