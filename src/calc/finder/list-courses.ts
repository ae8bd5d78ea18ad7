import type { Panel } from '../../plan/panel';
import type { Segment } from '../../plan/wall';
import type { Wish } from '../../plan/wish';
import { listRings } from './rings/list-rings';
import { wholeLines } from './rings/whole-lines';

const ringsAPanel = 6;
const mostColumns = 5000;

/** A ring or a flat wall before its rows are known. */
export interface Course {
  readonly columns: number;
  readonly path: readonly Omit<Segment, 'id'>[];
  /** Inside diameter of a ring, length of a flat wall. */
  readonly acrossMm: number;
  readonly openingMm: number | null;
  /** Worst distance of a face from the circle of best fit; null for a flat wall. */
  readonly worstMm: number | null;
  /** How far it misses the wish, as `listRings` counts. */
  readonly missMm: number;
}

/** Courses of one panel nearest the wish, best first: rings where a ring is wished, else both whole lengths. An opening that nobody stated counts as closed. */
export function listCourses(wished: Wish['wall'], acrossMm: number, { size, lock }: Panel): readonly Course[] {
  if (wished.form === 'flat') return flatCourses(acrossMm, size.widthMm);
  const given = {
    acrossMm,
    openingMm: wished.openingMm ?? 0,
    columnWidthMm: size.widthMm,
    depthMm: size.depthMm,
    lockStepsDeg: lock.stepsDeg,
  };
  return listRings(given, ringsAPanel).map(({ columns, path, insideDiameterMm, openingMm, worstMm, missMm }) => ({
    columns,
    path,
    acrossMm: insideDiameterMm,
    openingMm,
    worstMm,
    missMm,
  }));
}

function flatCourses(acrossMm: number, columnWidthMm: number): readonly Course[] {
  const { down, up } = wholeLines(acrossMm, columnWidthMm, mostColumns);
  return [down, up].flatMap((line, i, both) => {
    if (line === null || (i > 0 && both[0]?.count === line.count)) return [];
    return [
      {
        columns: line.count,
        path: [{ columns: line.count, jointDeg: 0, mixed: null, jointBeforeDeg: 0 }],
        acrossMm: line.lengthMm,
        openingMm: null,
        worstMm: null,
        missMm: Math.abs(line.lengthMm - acrossMm),
      },
    ];
  });
}
