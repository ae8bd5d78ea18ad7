import type { Rectangle } from './disc-overlap';

/** The nearest points of a straight edge and a rectangle, and how far apart they are; 0 where they meet. */
export interface Nearest {
  readonly distance: number;
  readonly onEdge: readonly [u: number, v: number];
  readonly onPlace: readonly [u: number, v: number];
}

/** The points of the edge a-b and of an upright rectangle that are nearest to each other. */
export function nearestPoints(aU: number, aV: number, bU: number, bV: number, place: Rectangle): Nearest {
  const crossing = firstInside(aU, aV, bU, bV, place);
  if (crossing !== null) return { distance: 0, onEdge: crossing, onPlace: crossing };
  const { fromU, toU, fromV, toV } = place;
  const dU = bU - aU;
  const dV = bV - aV;
  const square = dU * dU + dV * dV;
  let nearest: Nearest = { distance: Number.POSITIVE_INFINITY, onEdge: [aU, aV], onPlace: [aU, aV] };
  const consider = (edgeU: number, edgeV: number, placeU: number, placeV: number) => {
    const distance = Math.sqrt((edgeU - placeU) ** 2 + (edgeV - placeV) ** 2);
    if (distance < nearest.distance) nearest = { distance, onEdge: [edgeU, edgeV], onPlace: [placeU, placeV] };
  };
  for (const [u, v] of [
    [aU, aV],
    [bU, bV],
  ] as const) {
    consider(u, v, Math.min(toU, Math.max(fromU, u)), Math.min(toV, Math.max(fromV, v)));
  }
  for (const u of [fromU, toU]) {
    for (const v of [fromV, toV]) {
      const along = square > 0 ? ((u - aU) * dU + (v - aV) * dV) / square : 0;
      const t = Math.min(1, Math.max(0, along));
      consider(aU + t * dU, aV + t * dV, u, v);
    }
  }
  return nearest;
}

/** Where the edge first lies in the rectangle, by cutting it at each side in turn; null where it never does. */
function firstInside(aU: number, aV: number, bU: number, bV: number, { fromU, toU, fromV, toV }: Rectangle) {
  let enter = 0;
  let leave = 1;
  for (const [start, step, from, to] of [
    [aU, bU - aU, fromU, toU],
    [aV, bV - aV, fromV, toV],
  ] as const) {
    if (step === 0) {
      if (start < from || start > to) return null;
      continue;
    }
    const one = (from - start) / step;
    const other = (to - start) / step;
    enter = Math.max(enter, Math.min(one, other));
    leave = Math.min(leave, Math.max(one, other));
  }
  return enter <= leave ? ([aU + enter * (bU - aU), aV + enter * (bV - aV)] as const) : null;
}
