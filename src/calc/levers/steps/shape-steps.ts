import { bandRows } from '../../../plan/band-rows';
import { pathColumns } from '../../../plan/path-columns';
import type { Plan } from '../../../plan/plan';
import type { Segment, Wall } from '../../../plan/wall';
import type { LeverStep } from '../lever';

/** Most columns or rows that a lever takes away. */
const furthest = 120;

function shorten(segment: Segment, columns: number): Segment {
  const mixed =
    segment.mixed && columns > 1 ? { ...segment.mixed, count: Math.min(segment.mixed.count, columns - 1) } : null;
  return { ...segment, columns, mixed };
}

/** The wall without its last `count` columns on the right (or the first on the left); null where none would be left. */
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

/** The wall with `count` columns fewer, taken from both ends in turn so that it stays where it is. */
export function narrowWall(wall: Wall, count: number): Wall | null {
  const right = cutEnd(wall.path, Math.ceil(count / 2), 'right');
  const path = right && cutEnd(right, Math.floor(count / 2), 'left');
  return path && { ...wall, path: [...path] };
}

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

function shapeSteps(
  plan: Plan,
  change: (wall: Wall, count: number) => Wall | null,
  total: number,
  label: string,
): readonly LeverStep[] {
  const wall = plan.walls[0];
  if (!wall) return [];
  const steps: LeverStep[] = [];
  for (let count = 1; count <= furthest; count++) {
    const changed = change(wall, count);
    if (!changed) break;
    steps.push({
      from: { value: total, unit: 'count' },
      to: { value: total - count, unit: 'count' },
      command: { name: 'set-fields', args: { fields: [{ path: ['walls', 0], value: changed }], label } },
      buys: 0,
    });
  }
  return steps;
}

/** Fewer columns in the first wall. */
export function columnsSteps(plan: Plan): readonly LeverStep[] {
  const total = pathColumns(plan.walls[0]?.path ?? []);
  return shapeSteps(plan, narrowWall, total, 'fewer columns');
}

/** Fewer rows in the first wall, from the top. */
export function rowsSteps(plan: Plan): readonly LeverStep[] {
  const total = bandRows(plan.walls[0]?.bands ?? []);
  return shapeSteps(plan, lowerWall, total, 'fewer rows');
}
