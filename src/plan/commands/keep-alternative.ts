import { produce } from 'immer';
import type { Wall } from '../wall';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface KeepAlternativeArguments {
  readonly id: string;
  readonly name: string;
  /** The wall that stands, or another build for the same wish. */
  readonly wall: Wall;
}

/** Keeps a build beside the plan, in the same file. */
export const keepAlternative: CommandDefinition<'keep-alternative', KeepAlternativeArguments> = {
  name: 'keep-alternative',
  label: (_plan, { name }) => `keep ${name} as an alternative`,
  apply(plan, alternative) {
    return admit(
      plan,
      produce(plan, (draft) => {
        draft.alternatives.push(alternative);
      }),
    );
  },
};
