import { produce } from 'immer';
import type { Catalogue } from '../catalogue';
import { findItem } from '../find-item';
import { mergeItems } from '../merge-items';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface TakeItemsArguments {
  /** The catalogue of another plan. */
  readonly catalogue: Catalogue;
  /** What to take; what these items lean on (processors of a panel, breakouts of a processor) comes along. */
  readonly itemIds: readonly string[];
}

/** Takes items from another plan's catalogue. See mergeItems for ids that both plans use. */
export const takeItems: CommandDefinition<'take-items', TakeItemsArguments> = {
  name: 'take-items',
  label: (_plan, { catalogue, itemIds }) => {
    const [first] = itemIds;
    if (itemIds.length !== 1 || first === undefined) return `take ${itemIds.length} items into the catalogue`;
    return `take ${findItem(catalogue, first)?.item.name ?? first} into the catalogue`;
  },
  apply(plan, { catalogue, itemIds }) {
    const stranger = itemIds.find((id) => findItem(catalogue, id) === undefined);
    if (stranger !== undefined) return { refused: `the other catalogue has no '${stranger}'`, path: 'catalogue' };
    const merged = mergeItems(plan.catalogue, catalogue, itemIds).catalogue;
    if (merged === plan.catalogue) return { plan };
    return admit(
      plan,
      produce(plan, (draft) => {
        draft.catalogue = merged;
      }),
    );
  },
};
