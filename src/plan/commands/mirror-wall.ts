import { produce } from 'immer';
import type { HandChange } from '../hand-change';
import { mirrorHole } from '../mirror-hole';
import { mirrorPath } from '../mirror-path';
import type { Anchor } from '../primitives';
import type { Wall } from '../wall';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface MirrorWallArguments {
  readonly wallId: string;
}

/**
 * Swaps left and right of a wall about its own middle, where it stands: path, holes and changes by hand. One odd joint in an
 * even number of mixed ones keeps its side of the middle.
 */
export const mirrorWall: CommandDefinition<'mirror-wall', MirrorWallArguments> = {
  name: 'mirror-wall',
  label: (plan, { wallId }) => `mirror ${plan.walls.find(({ id }) => id === wallId)?.letter ?? wallId}`,
  apply(plan, { wallId }) {
    const place = plan.walls.findIndex(({ id }) => id === wallId);
    const wall = plan.walls[place];
    if (wall === undefined) return { refused: `there is no wall '${wallId}'`, path: 'walls' };
    return admit(
      plan,
      produce(plan, (draft) => {
        draft.walls[place] = {
          ...wall,
          path: mirrorPath(wall.path),
          holes: wall.holes.map((hole) => mirrorHole(hole, wall.path)),
        };
        plan.handChanges.forEach((change, at) => {
          const mirrored = mirrorChange(change, wall);
          if (mirrored !== change) draft.handChanges[at] = mirrored;
        });
      }),
    );
  },
};

function mirrorChange(change: HandChange, wall: Wall): HandChange {
  if ('at' in change)
    return change.at.surfaceId === wall.id ? { ...change, at: mirrorAnchor(change.at, wall) } : change;
  if (change.from.surfaceId !== wall.id && change.to.surfaceId !== wall.id) return change;
  return { ...change, from: mirrorAnchor(change.from, wall), to: mirrorAnchor(change.to, wall) };
}

/** Columns count from the other end of their segment; an anchor that is on no column of it rests, and stays as it is. */
function mirrorAnchor(anchor: Anchor, wall: Wall): Anchor {
  const segment = wall.path.find(({ id }) => id === anchor.segmentId);
  if (segment === undefined || anchor.surfaceId !== wall.id) return anchor;
  if (anchor.column < 1 || anchor.column > segment.columns) return anchor;
  return { ...anchor, column: segment.columns + 1 - anchor.column };
}
