import { produce } from 'immer';
import { type CatalogueItem, findItem } from '../find-item';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface DuplicateItemArguments {
  readonly itemId: string;
  readonly newId: string;
  readonly name: string;
}

/** Puts a copy behind an item of the catalogue, to be changed. Panels that the item drives are driven by the copy as well. */
export const duplicateItem: CommandDefinition<'duplicate-item', DuplicateItemArguments> = {
  name: 'duplicate-item',
  label: (plan, { itemId }) => `duplicate ${findItem(plan.catalogue, itemId)?.item.name ?? itemId}`,
  apply(plan, { itemId, newId, name }) {
    const found = findItem(plan.catalogue, itemId);
    if (found === undefined) return { refused: `the catalogue has no '${itemId}'`, path: 'catalogue' };
    return admit(
      plan,
      produce(plan, ({ catalogue }) => {
        const items = catalogue[found.list] as CatalogueItem[];
        items.splice(found.place + 1, 0, { ...found.item, id: newId, name });
        if (found.list !== 'processors') return;
        for (const { data } of catalogue.panels) {
          const pair = data.drivenBy.find(({ processorId }) => processorId === itemId);
          if (pair !== undefined) data.drivenBy.push({ ...pair, processorId: newId });
        }
      }),
    );
  },
};
