import type { Tick } from '../../plan/build-log';
import { columnName } from '../surfaces/column-name';
import type { SurfaceSet } from '../surfaces/surface-table';

const column = /^(?:([A-Z]) )?C(\d+)$/;

/**
 * The name under which the plan has a ticked thing now. The letter of a column comes and goes with the second surface: a
 * column without one is of the first surface, which is the one that was there alone. Other names stand as they are.
 */
export function thingNamed(set: SurfaceSet, { of, name }: Pick<Tick, 'of' | 'name'>): string {
  const match = of === 'column' ? column.exec(name) : null;
  if (!match) return name;
  const [, letter, number] = match;
  const surface = letter === undefined ? set.surfaces[0] : set.surfaces.find((one) => one.letter === letter);
  return surface ? columnName(set, surface, Number(number)) : name;
}
