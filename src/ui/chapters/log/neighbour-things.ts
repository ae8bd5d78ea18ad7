import type { BuiltThing } from '../../../calc/log/built-thing';
import type { LogState } from '../../../calc/log/log-state';
import type { SurfaceSet } from '../../../calc/surfaces/surface-table';

/** The things beside one, as one stands before them; null where there is none. */
export interface NeighbourThings {
  readonly left: BuiltThing | null;
  readonly right: BuiltThing | null;
}

/**
 * The things before and after one in the order of its kind, on the same surface. Columns of a wall count from the left as
 * seen from inside: who stands behind the wall has the next one at the left hand.
 */
export function neighbourThings(
  surfaces: SurfaceSet,
  state: LogState,
  thing: BuiltThing,
  from: 'behind' | 'inside',
): NeighbourThings {
  const row = state[thing.of].filter(({ surfaceId }) => surfaceId === thing.surfaceId);
  const place = row.findIndex(({ name }) => name === thing.name);
  const before = place > 0 ? row[place - 1]! : null;
  const after = place < 0 ? null : (row[place + 1] ?? null);
  const isWall = surfaces.surfaces.some(({ surfaceId, kind }) => surfaceId === thing.surfaceId && kind === 'wall');
  const isMirrored = from === 'behind' && isWall && thing.of === 'column';
  return isMirrored ? { left: after, right: before } : { left: before, right: after };
}
