import { produce } from 'immer';
import type { Ceiling } from '../ceiling';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface AddCeilingArguments {
  /** draftCeiling makes a plain one. */
  readonly ceiling: Ceiling;
}

/** Adds a ceiling. */
export const addCeiling: CommandDefinition<'add-ceiling', AddCeilingArguments> = {
  name: 'add-ceiling',
  label: (_plan, { ceiling }) => `add ${`${ceiling.letter} ${ceiling.name}`.trim()}`,
  apply(plan, { ceiling }) {
    return admit(
      plan,
      produce(plan, (draft) => {
        draft.ceilings.push(ceiling);
      }),
    );
  },
};
