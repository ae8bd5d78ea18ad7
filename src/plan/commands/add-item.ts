import { produce } from 'immer';
import type { CatalogueItem, CatalogueList } from '../find-item';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface AddItemArguments {
  readonly list: CatalogueList;
  readonly item: CatalogueItem;
}

/** Adds an item at the end of a list of the catalogue. */
export const addItem: CommandDefinition<'add-item', AddItemArguments> = {
  name: 'add-item',
  label: (_plan, { item }) => `add ${item.name} to the catalogue`,
  apply(plan, { list, item }) {
    if (!Object.hasOwn(plan.catalogue, list)) return { refused: 'the catalogue has no such list', path: 'catalogue' };
    return admit(
      plan,
      produce(plan, (draft) => {
        (draft.catalogue[list] as CatalogueItem[]).push(item);
      }),
    );
  },
};
