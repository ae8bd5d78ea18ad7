import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { removeWhere } from './remove-where';

export interface ClearHandChangeArguments {
  readonly ids: readonly string[];
}

/** Takes changes by hand out of the plan, resting ones too; what follows from the plan alone holds again. */
export const clearHandChange: CommandDefinition<'clear-hand-change', ClearHandChangeArguments> = {
  name: 'clear-hand-change',
  label: (_plan, { ids }) => (ids.length === 1 ? 'clear a change by hand' : `clear ${ids.length} changes by hand`),
  apply(plan, { ids }) {
    const known = new Set(plan.handChanges.map(({ id }) => id));
    const stranger = ids.find((id) => !known.has(id));
    if (stranger !== undefined) return { refused: `there is no change by hand '${stranger}'`, path: 'handChanges' };
    const cleared = new Set(ids);
    return admit(
      plan,
      produce(plan, (draft) => {
        removeWhere(draft.handChanges, ({ id }) => cleared.has(id));
      }),
    );
  },
};
