import type { Rectangle } from './disc-overlap';

/** Plan distance from the straight edge a-b to an upright rectangle; 0 where they meet. Makes no objects: it is asked most. */
export function placeDistance(aU: number, aV: number, bU: number, bV: number, place: Rectangle): number {
  const { fromU, toU, fromV, toV } = place;
  const dU = bU - aU;
  const dV = bV - aV;
  if (meets(aU, dU, fromU, toU, aV, dV, fromV, toV)) return 0;
  const square = dU * dU + dV * dV;
  return Math.sqrt(
    Math.min(
      squareToPlace(aU, aV, place),
      squareToPlace(bU, bV, place),
      squareToEdge(fromU - aU, fromV - aV, dU, dV, square),
      squareToEdge(toU - aU, fromV - aV, dU, dV, square),
      squareToEdge(fromU - aU, toV - aV, dU, dV, square),
      squareToEdge(toU - aU, toV - aV, dU, dV, square),
    ),
  );
}

/** True where the edge has a point in the rectangle: cut at the sides of each axis in turn. */
function meets(
  aU: number,
  dU: number,
  fromU: number,
  toU: number,
  aV: number,
  dV: number,
  fromV: number,
  toV: number,
): boolean {
  let enter = 0;
  let leave = 1;
  if (dU === 0) {
    if (aU < fromU || aU > toU) return false;
  } else {
    enter = Math.max(enter, Math.min((fromU - aU) / dU, (toU - aU) / dU));
    leave = Math.min(leave, Math.max((fromU - aU) / dU, (toU - aU) / dU));
  }
  if (dV === 0) {
    if (aV < fromV || aV > toV) return false;
  } else {
    enter = Math.max(enter, Math.min((fromV - aV) / dV, (toV - aV) / dV));
    leave = Math.min(leave, Math.max((fromV - aV) / dV, (toV - aV) / dV));
  }
  return enter <= leave;
}

function squareToPlace(u: number, v: number, { fromU, toU, fromV, toV }: Rectangle): number {
  const offU = Math.max(0, fromU - u, u - toU);
  const offV = Math.max(0, fromV - v, v - toV);
  return offU * offU + offV * offV;
}

/** From a point, given from a, to the edge from a along d. */
function squareToEdge(u: number, v: number, dU: number, dV: number, square: number): number {
  const along = square > 0 ? (u * dU + v * dV) / square : 0;
  const t = Math.min(1, Math.max(0, along));
  const offU = u - t * dU;
  const offV = v - t * dV;
  return offU * offU + offV * offV;
}
