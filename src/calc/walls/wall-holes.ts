import { bandRows } from '../../plan/band-rows';
import { pathColumns } from '../../plan/path-columns';
import type { Wall } from '../../plan/wall';

/** A hole on the lattice of its wall; columns and rows from 0, the first in, the last out. */
export interface PlacedHole {
  /** Index into `wall.holes`. */
  readonly index: number;
  readonly fromColumn: number;
  readonly toColumn: number;
  readonly fromRow: number;
  readonly toRow: number;
  /** True where part of it, or all, has no panels to leave out. */
  readonly outside: boolean;
}

/**
 * Where the holes of a wall lie. A hole begins at its column of its segment and goes on over the segments that follow.
 * What is beyond the last column or the top row is cut off; one whose segment or first column is not there takes away
 * nothing (`fromColumn` = `toColumn` = 0).
 */
export function placeHoles(wall: Pick<Wall, 'path' | 'bands' | 'holes'>): readonly PlacedHole[] {
  const columns = pathColumns(wall.path);
  const rows = bandRows(wall.bands);
  return wall.holes.map((hole, index) => {
    const nowhere = { index, fromColumn: 0, toColumn: 0, fromRow: 0, toRow: 0, outside: true };
    const segment = wall.path.findIndex((one) => one.id === hole.segmentId);
    if (segment < 0 || hole.column > wall.path[segment]!.columns || hole.row > rows) return nowhere;
    const fromColumn = pathColumns(wall.path.slice(0, segment)) + hole.column - 1;
    const fromRow = hole.row - 1;
    const toColumn = Math.min(columns, fromColumn + hole.columns);
    const toRow = Math.min(rows, fromRow + hole.rows);
    const outside = toColumn < fromColumn + hole.columns || toRow < fromRow + hole.rows;
    return { index, fromColumn, toColumn, fromRow, toRow, outside };
  });
}
