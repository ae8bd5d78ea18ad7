/** An upright rectangle about its disc's centre. */
export interface Rectangle {
  readonly fromU: number;
  readonly toU: number;
  readonly fromV: number;
  readonly toV: number;
}

/**
 * Area that a rectangle and a disc about 0, 0 share, in the square of the unit given. Signed areas of the triangles or
 * sectors between the centre and each side, added up. *Source: plane geometry, any handbook of mathematics.*
 */
export function discOverlap({ fromU, toU, fromV, toV }: Rectangle, radius: number): number {
  const nearU = Math.max(0, fromU, -toU);
  const nearV = Math.max(0, fromV, -toV);
  if (nearU * nearU + nearV * nearV >= radius * radius) return 0;
  const farU = Math.max(Math.abs(fromU), Math.abs(toU));
  const farV = Math.max(Math.abs(fromV), Math.abs(toV));
  if (farU * farU + farV * farV <= radius * radius) return (toU - fromU) * (toV - fromV);
  const area =
    areaBehind(fromU, fromV, toU, fromV, radius) +
    areaBehind(toU, fromV, toU, toV, radius) +
    areaBehind(toU, toV, fromU, toV, radius) +
    areaBehind(fromU, toV, fromU, fromV, radius);
  return Math.max(0, area);
}

/** Signed area of the disc between the centre and the side from a to b. */
function areaBehind(aU: number, aV: number, bU: number, bV: number, radius: number): number {
  const dU = bU - aU;
  const dV = bV - aV;
  // a + t d lies on the circle where t solves |d|^2 t^2 + 2 (a.d) t + |a|^2 - r^2 = 0.
  const square = dU * dU + dV * dV;
  const half = aU * dU + aV * dV;
  const root = half * half - square * (aU * aU + aV * aV - radius * radius);
  if (!(root > 0) || square === 0) return sector(aU, aV, bU, bV, radius);
  const enter = (-half - Math.sqrt(root)) / square;
  const leave = (-half + Math.sqrt(root)) / square;
  if (enter >= 1 || leave <= 0) return sector(aU, aV, bU, bV, radius);
  const from = Math.max(0, enter);
  const to = Math.min(1, leave);
  const inU = aU + from * dU;
  const inV = aV + from * dV;
  const outU = aU + to * dU;
  const outV = aV + to * dV;
  return (
    (from > 0 ? sector(aU, aV, inU, inV, radius) : 0) +
    (inU * outV - inV * outU) / 2 +
    (to < 1 ? sector(outU, outV, bU, bV, radius) : 0)
  );
}

const sector = (aU: number, aV: number, bU: number, bV: number, radius: number): number =>
  (radius * radius * Math.atan2(aU * bV - aV * bU, aU * bU + aV * bV)) / 2;
