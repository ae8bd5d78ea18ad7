import { bandRows } from './band-rows';
import type { HandChange } from './hand-change';
import type { Anchor } from './primitives';
import type { Wall, WallHole } from './wall';

/** How much of what was decided by hand has no place on a wall. */
export interface Resting {
  readonly handChanges: number;
  readonly holes: number;
}

/** Counts the hand changes and holes anchored to `wall` whose segment, column or row it does not have. They stay in the file. */
export function countResting(wall: Wall, handChanges: readonly HandChange[]): Resting {
  const rows = bandRows(wall.bands);
  const columnsOf = new Map(wall.path.map((segment) => [segment.id, segment.columns]));
  const isThere = (segmentId: string | null, column: number, row: number) =>
    column >= 1 && row >= 1 && row <= rows && column <= (columnsOf.get(segmentId ?? '') ?? 0);
  const rests = (anchor: Anchor) =>
    anchor.surfaceId === wall.id && !isThere(anchor.segmentId, anchor.column, anchor.row);
  const anchorsOf = (change: HandChange) => ('at' in change ? [change.at] : [change.from, change.to]);
  return {
    handChanges: handChanges.filter((change) => anchorsOf(change).some(rests)).length,
    holes: wall.holes.filter((hole: WallHole) => !isThere(hole.segmentId, hole.column, hole.row)).length,
  };
}
