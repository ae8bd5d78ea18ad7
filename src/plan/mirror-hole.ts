import { mirrorPath } from './mirror-path';
import { pathColumns } from './path-columns';
import type { Segment, WallHole } from './wall';

/**
 * The hole on the mirrored path. It goes on over the segments behind its own, so its first column may come to lie in another
 * segment; what reaches beyond the last column is cut off. A hole whose place is not on the path stays as it is.
 */
export function mirrorHole(hole: WallHole, path: readonly Segment[]): WallHole {
  const segment = path.findIndex(({ id }) => id === hole.segmentId);
  if (segment < 0 || hole.column > path[segment]!.columns) return hole;
  const columns = pathColumns(path);
  const before = pathColumns(path.slice(0, segment)) + hole.column - 1;
  const wide = Math.min(hole.columns, columns - before);
  let column = columns - before - wide + 1;
  for (const { id, columns: own } of mirrorPath(path)) {
    if (column <= own) return { ...hole, segmentId: id, column, columns: wide };
    column -= own;
  }
  return hole;
}
