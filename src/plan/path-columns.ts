import type { Segment } from './wall';

/** Columns of a whole path. */
export function pathColumns(path: readonly Pick<Segment, 'columns'>[]): number {
  return path.reduce((sum, segment) => sum + segment.columns, 0);
}
