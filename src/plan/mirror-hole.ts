import { mirrorPath } from './mirror-path';
import type { Segment, WallHole } from './wall';

/**
 * The hole on the mirrored path. It goes on over the segments behind its own, so its first column may come to lie in another
 * segment; what reaches beyond the last column is cut off. A hole whose place is not on the path stays as it is.
 */
export function mirrorHole(hole: WallHole, path: readonly Segment[]): WallHole {
  const segment = path.findIndex(({ id }) => id === hole.segmentId);
  if (segment < 0 || hole.column > path[segment]!.columns) return hole;
  const columns = columnsOf(path);
  const before = columnsOf(path.slice(0, segment)) + hole.column - 1;
  const wide = Math.min(hole.columns, columns - before);
  let column = columns - before - wide + 1;
  for (const { id, columns: own } of mirrorPath(path)) {
    if (column <= own) return { ...hole, segmentId: id, column, columns: wide };
    column -= own;
  }
  return hole;
}

function columnsOf(path: readonly Segment[]): number {
  return path.reduce((sum, segment) => sum + segment.columns, 0);
}
