import { produce } from 'immer';
import { formatRate } from '../../units/format-rate';
import type { Mode } from '../picture';
import type { Plan } from '../plan';
import { sameMode } from '../same-mode';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { removeWhere } from './remove-where';

export interface SetModeArguments {
  /** Surfaces that run this way from now on; null: all of them. */
  readonly surfaceIds: readonly string[] | null;
  readonly mode: Mode;
}

/**
 * Keeps a rate and a depth for some surfaces or for all. Where all are meant, by name or by null, it becomes the stage's own
 * and nothing differs any more; a surface named as the stage's own runs no longer keeps an entry for itself.
 */
export const setMode: CommandDefinition<'set-mode', SetModeArguments> = {
  name: 'set-mode',
  label: (plan, { surfaceIds, mode }) => {
    const letters = surfaces(plan).filter(({ id }) => surfaceIds?.includes(id));
    const where = surfaceIds === null ? '' : ` on ${letters.map(({ letter }) => letter).join(', ')}`;
    return `${formatRate(mode.rate)} fps, ${mode.depthBits} bit${where}`;
  },
  apply(plan, { surfaceIds, mode }) {
    const all = surfaces(plan).map(({ id }) => id);
    const stranger = surfaceIds?.find((id) => !all.includes(id));
    if (stranger !== undefined) return { refused: `there is no surface '${stranger}'`, path: 'picture.bySurface' };
    const isForAll = surfaceIds === null || (all.length > 0 && all.every((id) => surfaceIds.includes(id)));
    return admit(
      plan,
      produce(plan, ({ picture }) => {
        if (isForAll) {
          picture.base = mode;
          picture.bySurface = [];
          return;
        }
        const named = new Set(surfaceIds);
        removeWhere(picture.bySurface, (entry) => named.has(entry.surfaceId));
        if (sameMode(mode, picture.base)) return;
        for (const surfaceId of named) picture.bySurface.push({ surfaceId, mode });
      }),
    );
  },
};

function surfaces(plan: Plan): readonly { readonly id: string; readonly letter: string }[] {
  return [...plan.walls, ...plan.ceilings];
}
