import { pathColumns } from '../../../plan/path-columns';
import type { Segment, Wall, WallHole } from '../../../plan/wall';

/** A wall that lost columns, and by how many the columns of its first segment count less than they did. */
export interface NarrowedWall {
  readonly wall: Wall;
  readonly shiftedBy: number;
}

/**
 * The wall with `count` columns fewer, taken from both ends in turn so that it stays where it is; null where none would be
 * left. Its holes stay where they are and lose what the wall loses.
 */
export function narrowWall(wall: Wall, count: number): NarrowedWall | null {
  const fromLeft = Math.floor(count / 2);
  const right = cutEnd(wall.path, Math.ceil(count / 2), 'right');
  const path = right && cutEnd(right, fromLeft, 'left');
  if (path === null) return null;
  const first = wall.path.findIndex(({ id }) => id === path[0]!.id);
  return {
    wall: { ...wall, path: [...path], holes: wall.holes.flatMap((hole) => keepHole(hole, wall.path, path, fromLeft)) },
    shiftedBy: fromLeft - pathColumns(wall.path.slice(0, first)),
  };
}

function shorten(segment: Segment, columns: number): Segment {
  const mixed =
    segment.mixed && columns > 1 ? { ...segment.mixed, count: Math.min(segment.mixed.count, columns - 1) } : null;
  return { ...segment, columns, mixed };
}

function cutEnd(path: readonly Segment[], count: number, side: 'left' | 'right'): readonly Segment[] | null {
  const kept = [...path];
  let left = count;
  while (left > 0) {
    const at = side === 'right' ? kept.length - 1 : 0;
    const segment = kept[at];
    if (!segment) return null;
    if (segment.columns > left) {
      kept[at] = shorten(segment, segment.columns - left);
      left = 0;
    } else {
      left -= segment.columns;
      kept.splice(at, 1);
    }
  }
  return kept.length === 0 ? null : kept;
}

/** The part of a hole that is left on a path that lost columns on its left; a hole that was not on the wall stays as it is. */
function keepHole(
  hole: WallHole,
  before: readonly Segment[],
  after: readonly Segment[],
  fromLeft: number,
): readonly WallHole[] {
  const segment = before.findIndex(({ id }) => id === hole.segmentId);
  if (segment < 0 || hole.column > before[segment]!.columns) return [hole];
  const from = pathColumns(before.slice(0, segment)) + hole.column - 1 - fromLeft;
  const to = Math.min(pathColumns(after), from + hole.columns);
  let column = Math.max(0, from);
  const columns = to - column;
  if (columns <= 0) return [];
  const at = after.find((one) => {
    if (column < one.columns) return true;
    column -= one.columns;
    return false;
  });
  return at === undefined ? [] : [{ ...hole, segmentId: at.id, column: column + 1, columns }];
}
