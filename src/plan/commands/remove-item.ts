import { produce } from 'immer';
import { type CatalogueItem, findItem } from '../find-item';
import { findUses } from '../find-uses';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { removeWhere } from './remove-where';

export interface RemoveItemArguments {
  readonly itemId: string;
}

/** Takes an item out of the catalogue, with its stock, its spares and its pairs with panels. Refused while something needs it. */
export const removeItem: CommandDefinition<'remove-item', RemoveItemArguments> = {
  name: 'remove-item',
  label: (plan, { itemId }) => `remove ${findItem(plan.catalogue, itemId)?.item.name ?? itemId} from the catalogue`,
  apply(plan, { itemId }) {
    const found = findItem(plan.catalogue, itemId);
    if (found === undefined) return { refused: `the catalogue has no '${itemId}'`, path: 'catalogue' };
    const [use] = findUses(plan, itemId);
    if (use !== undefined) return { refused: `${found.item.name} is in use`, path: use };
    return admit(
      plan,
      produce(plan, ({ catalogue, wish, materials }) => {
        (catalogue[found.list] as CatalogueItem[]).splice(found.place, 1);
        removeWhere(wish.stock, (entry) => entry.itemId === itemId);
        removeWhere(materials.byItem, (entry) => entry.itemId === itemId);
        for (const { data } of catalogue.panels) removeWhere(data.drivenBy, (pair) => pair.processorId === itemId);
      }),
    );
  },
};
