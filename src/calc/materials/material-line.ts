import type { Stock } from '../../plan/catalogue';
import type { Materials } from '../../plan/materials';
import type { MaterialLine } from './material-result';
import type { NeededItem } from './needed-item';
import { spareCount } from './spare-count';

/** A line of the bill: spares by the plan's rule, less what is owned; not stated counts as none owned. */
export function materialLine(item: NeededItem, materials: Materials, stock: readonly Stock[]): MaterialLine {
  const held = stock.find(({ itemId }) => itemId === item.itemId);
  const spare = spareCount(materials, item.itemId, item.needed);
  const owned = held?.owned ?? null;
  const toGet = Math.max(0, item.needed + spare - (owned ?? 0));
  return {
    ...item,
    spare,
    owned,
    toGet,
    obtainable: held?.obtainable ?? null,
    massKg: (item.needed + spare) * item.massKgEach,
    price: item.priceEach === null ? null : toGet * item.priceEach,
  };
}
