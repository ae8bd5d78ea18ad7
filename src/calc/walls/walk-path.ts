import { degrees, toRadians } from '../../units/angle';

export interface WalkGiven {
  /** Joint before each column, degrees, concave positive; index 0 without meaning. */
  readonly jointDeg: Float64Array;
  readonly columnWidthMm: number;
  /** Depth of the deepest panel. */
  readonly depthMm: number;
  /** Depth of the deepest panel whose frame has no bevel; 0 where all have one. Only it opens a convex seam. */
  readonly unbevelledMm: number;
  /** Heading in the middle of the wall, degrees anticlockwise from +x. */
  readonly turnDeg: number;
}

/** The columns of a wall in plan, first front corner at 0, 0. */
export interface WalkedPath {
  readonly turnsDeg: number;
  readonly headingDeg: Float64Array;
  /** x0 y0 x1 y1 a column, left then right as seen from inside. */
  readonly frontMm: Float64Array;
  readonly backMm: Float64Array;
  readonly seamMm: Float64Array;
}

/**
 * Walks the LED faces from column 1: P(i+1) = P(i) + w (cos h, sin h); a concave joint turns clockwise, h -= joint, and
 * leaves the backs 2 d sin(joint / 2) apart. On a convex joint unbevelled backs touch, and the fronts stand apart by
 * the same, along the mean heading.
 */
export function walkPath({ jointDeg, columnWidthMm, depthMm, unbevelledMm, turnDeg }: WalkGiven): WalkedPath {
  const columns = jointDeg.length;
  let turnsDeg = 0;
  for (let c = 1; c < columns; c++) turnsDeg += jointDeg[c]!;
  const headingDeg = new Float64Array(columns);
  const frontMm = new Float64Array(columns * 4);
  const backMm = new Float64Array(columns * 4);
  const seamMm = new Float64Array(columns);
  let heading = turnDeg + turnsDeg / 2;
  let x = 0;
  let y = 0;
  for (let c = 0; c < columns; c++) {
    if (c > 0) {
      const joint = jointDeg[c]!;
      const half = toRadians(degrees(Math.abs(joint) / 2));
      if (joint > 0) {
        seamMm[c] = 2 * depthMm * Math.sin(half);
      } else if (joint < 0 && unbevelledMm > 0) {
        const gap = 2 * unbevelledMm * Math.sin(half);
        const mean = toRadians(degrees(heading - joint / 2));
        seamMm[c] = gap;
        x += gap * Math.cos(mean);
        y += gap * Math.sin(mean);
      }
      heading -= joint;
    }
    const along = toRadians(degrees(heading));
    const across = Math.cos(along);
    const up = Math.sin(along);
    const nextX = x + columnWidthMm * across;
    const nextY = y + columnWidthMm * up;
    headingDeg[c] = heading;
    frontMm.set([x, y, nextX, nextY], c * 4);
    backMm.set([x - depthMm * up, y + depthMm * across, nextX - depthMm * up, nextY + depthMm * across], c * 4);
    x = nextX;
    y = nextY;
  }
  return { turnsDeg, headingDeg, frontMm, backMm, seamMm };
}
