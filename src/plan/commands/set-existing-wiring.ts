import { produce } from 'immer';
import type { ExistingWiring } from '../signal';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface SetExistingWiringArguments {
  /** null: forget the wiring that was read. */
  readonly wiring: ExistingWiring | null;
}

/** Takes in a wiring that exists already, to be checked as it stands, or forgets it. */
export const setExistingWiring: CommandDefinition<'set-existing-wiring', SetExistingWiringArguments> = {
  name: 'set-existing-wiring',
  label: (_plan, { wiring }) =>
    wiring === null ? 'forget the wiring that exists' : `read wiring ${wiring.source}`.trim(),
  apply(plan, { wiring }) {
    return admit(
      plan,
      produce(plan, (draft) => {
        draft.existingWiring = wiring;
      }),
    );
  },
};
