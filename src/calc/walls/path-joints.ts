import { pathColumns } from '../../plan/path-columns';
import type { Segment } from '../../plan/wall';
import { spreadEvenly } from './spread-evenly';

/** A segment's form without its identity: what a build that is not in a plan yet has too. */
export type SegmentForm = Omit<Segment, 'id'>;

/**
 * Joint before each column of a path, degrees; index 0 is 0. A segment of n columns has n - 1 joints of its own, and
 * before it, unless it is the first, the one that joins it to the segment before. Mixed joints beyond n - 1 are not
 * there; a check says so.
 */
export function pathJoints(path: readonly SegmentForm[]): Float64Array {
  const joints = new Float64Array(pathColumns(path));
  let column = 0;
  path.forEach((segment, index) => {
    if (index > 0) joints[column] = segment.jointBeforeDeg;
    const own = segment.columns - 1;
    const mixed = segment.mixed === null ? null : spreadEvenly(own, segment.mixed.count);
    for (let j = 0; j < own; j++) {
      joints[column + 1 + j] = mixed?.[j] === 1 ? segment.mixed!.jointDeg : segment.jointDeg;
    }
    column += segment.columns;
  });
  return joints;
}
