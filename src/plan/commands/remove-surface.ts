import { produce } from 'immer';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { removeWhere } from './remove-where';

export interface RemoveSurfaceArguments {
  readonly surfaceId: string;
}

/**
 * Takes a wall or a ceiling out, with what rates and processors are stated for it alone. Its hand changes and alternatives
 * stay in the file and return with it.
 */
export const removeSurface: CommandDefinition<'remove-surface', RemoveSurfaceArguments> = {
  name: 'remove-surface',
  label: (plan, { surfaceId }) => {
    const surface = [...plan.walls, ...plan.ceilings].find(({ id }) => id === surfaceId);
    return `remove ${surface === undefined ? surfaceId : `${surface.letter} ${surface.name}`.trim()}`;
  },
  apply(plan, { surfaceId }) {
    const isIt = ({ id }: { readonly id: string }) => id === surfaceId;
    if (!plan.walls.some(isIt) && !plan.ceilings.some(isIt)) return { refused: `there is no surface '${surfaceId}'` };
    const isOfIt = (entry: { readonly surfaceId: string }) => entry.surfaceId === surfaceId;
    return admit(
      plan,
      produce(plan, ({ walls, ceilings, picture, signal }) => {
        removeWhere(walls, isIt);
        removeWhere(ceilings, isIt);
        removeWhere(picture.bySurface, isOfIt);
        removeWhere(signal.bySurface, isOfIt);
        removeWhere(picture.alsoServe, ({ surfaceIds }) => surfaceIds?.length === 1 && surfaceIds[0] === surfaceId);
        for (const { surfaceIds } of picture.alsoServe) removeWhere(surfaceIds ?? [], (id) => id === surfaceId);
      }),
    );
  },
};
