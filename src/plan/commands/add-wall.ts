import { produce } from 'immer';
import type { Wall } from '../wall';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface AddWallArguments {
  /** draftWall makes a plain one. */
  readonly wall: Wall;
}

/** Adds a wall. */
export const addWall: CommandDefinition<'add-wall', AddWallArguments> = {
  name: 'add-wall',
  label: (_plan, { wall }) => `add ${`${wall.letter} ${wall.name}`.trim()}`,
  apply(plan, { wall }) {
    return admit(
      plan,
      produce(plan, (draft) => {
        draft.walls.push(wall);
      }),
    );
  },
};
