import { produce } from 'immer';
import { findItem } from '../find-item';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface SetStockArguments {
  readonly itemId: string;
  /** null: not stated; left out: as it was. */
  readonly owned?: number | null;
  readonly obtainable?: number | null;
}

/** States how many of an item are owned and how many more can be had. An entry that states neither goes. */
export const setStock: CommandDefinition<'set-stock', SetStockArguments> = {
  name: 'set-stock',
  label: (plan, { itemId }) => `stock of ${findItem(plan.catalogue, itemId)?.item.name ?? itemId}`,
  apply(plan, { itemId, owned, obtainable }) {
    return admit(
      plan,
      produce(plan, ({ wish }) => {
        const place = wish.stock.findIndex((entry) => entry.itemId === itemId);
        const before = wish.stock[place] ?? { itemId, owned: null, obtainable: null };
        const entry = {
          itemId,
          owned: owned === undefined ? before.owned : owned,
          obtainable: obtainable === undefined ? before.obtainable : obtainable,
        };
        const isStated = entry.owned !== null || entry.obtainable !== null;
        if (place < 0) wish.stock.push(...(isStated ? [entry] : []));
        else wish.stock.splice(place, 1, ...(isStated ? [entry] : []));
      }),
    );
  },
};
