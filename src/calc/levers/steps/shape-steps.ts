import { bandRows } from '../../../plan/band-rows';
import type { Path } from '../../../plan/commands/path';
import { pathColumns } from '../../../plan/path-columns';
import type { Plan } from '../../../plan/plan';
import type { Anchor } from '../../../plan/primitives';
import type { Wall } from '../../../plan/wall';
import type { LeverStep } from '../lever';
import { narrowWall } from './narrow-wall';

/** Most columns or rows that a lever takes away. */
const furthest = 120;

/** The wall with `count` rows fewer, from the top; null where none would be left. */
export function lowerWall(wall: Wall, count: number): Wall | null {
  const bands = [...wall.bands];
  let left = count;
  while (left > 0) {
    const top = bands.pop();
    if (!top) return null;
    if (top.rows > left) bands.push({ ...top, rows: top.rows - left });
    left -= Math.min(left, top.rows);
  }
  return bands.length === 0 ? null : { ...wall, bands };
}

type Change = (count: number) => readonly { readonly path: Path; readonly value: unknown }[] | null;

function shapeSteps(change: Change, total: number, label: string): readonly LeverStep[] {
  const steps: LeverStep[] = [];
  for (let count = 1; count <= furthest; count++) {
    const fields = change(count);
    if (!fields) break;
    steps.push({
      from: { value: total, unit: 'count' },
      to: { value: total - count, unit: 'count' },
      command: { name: 'set-fields', args: { fields, label } },
      buys: 0,
    });
  }
  return steps;
}

/** Fewer columns in the first wall; what was changed by hand on it stays with its panels. */
export function columnsSteps({ walls: [wall], handChanges }: Plan): readonly LeverStep[] {
  if (!wall) return [];
  const change: Change = (count) => {
    const narrowed = narrowWall(wall, count);
    if (!narrowed) return null;
    const { shiftedBy } = narrowed;
    const first = narrowed.wall.path[0]!.id;
    const isMoved = ({ surfaceId, segmentId }: Anchor) => surfaceId === wall.id && segmentId === first;
    const move = (at: Anchor): Anchor => (isMoved(at) ? { ...at, column: at.column - shiftedBy } : at);
    const moved = handChanges.map((one) =>
      'at' in one ? { ...one, at: move(one.at) } : { ...one, from: move(one.from), to: move(one.to) },
    );
    const isHeld = shiftedBy > 0 && handChanges.length > 0;
    return [{ path: ['walls', 0], value: narrowed.wall }, ...(isHeld ? [{ path: ['handChanges'], value: moved }] : [])];
  };
  return shapeSteps(change, pathColumns(wall.path), 'fewer columns');
}

/** Fewer rows in the first wall, from the top. */
export function rowsSteps({ walls: [wall] }: Plan): readonly LeverStep[] {
  if (!wall) return [];
  const change: Change = (count) => {
    const lower = lowerWall(wall, count);
    return lower && [{ path: ['walls', 0], value: lower }];
  };
  return shapeSteps(change, bandRows(wall.bands), 'fewer rows');
}
