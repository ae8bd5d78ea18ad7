import type { Segment, Wall } from '../../../src/plan/wall';

/** A segment of `columns` with one joint angle. */
export function plainSegment(id: string, columns: number, jointDeg: number, more: Partial<Segment> = {}): Segment {
  return { id, columns, jointDeg, mixed: null, jointBeforeDeg: 0, ...more };
}

/** A wall of one segment, `rows` of panel 'p1', at the origin of the plan. */
export function plainWall(columns: number, jointDeg: number, rows = 1, more: Partial<Wall> = {}): Wall {
  return {
    id: 'wall',
    letter: 'A',
    name: 'Wall',
    place: { xMm: 0, yMm: 0, turnDeg: 0 },
    baseMm: 0,
    support: 'stands',
    path: [plainSegment('s1', columns, jointDeg)],
    bands: [{ id: 'b1', panelId: 'p1', rows, turnDeg: 0 }],
    holes: [],
    ...more,
  };
}
