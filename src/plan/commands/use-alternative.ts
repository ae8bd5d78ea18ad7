import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface UseAlternativeArguments {
  readonly id: string;
  /** Name under which the wall that stands now is kept; its own where left out. */
  readonly oldName?: string;
}

/** Swaps an alternative with the wall of the same id. Where that wall is gone, the alternative becomes a wall again. */
export const useAlternative: CommandDefinition<'use-alternative', UseAlternativeArguments> = {
  name: 'use-alternative',
  label: (plan, { id }) => `use ${plan.alternatives.find((kept) => kept.id === id)?.name ?? id}`,
  apply(plan, { id, oldName }) {
    const place = plan.alternatives.findIndex((kept) => kept.id === id);
    const kept = plan.alternatives[place];
    if (kept === undefined) return { refused: `there is no alternative '${id}'`, path: 'alternatives' };
    const wallPlace = plan.walls.findIndex((wall) => wall.id === kept.wall.id);
    const old = plan.walls[wallPlace];
    return admit(
      plan,
      produce(plan, (draft) => {
        if (old === undefined) {
          draft.walls.push(kept.wall);
          draft.alternatives.splice(place, 1);
          return;
        }
        draft.walls[wallPlace] = kept.wall;
        draft.alternatives[place] = { id, name: oldName ?? old.name, wall: old };
      }),
    );
  },
};
