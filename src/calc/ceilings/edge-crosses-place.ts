import type { Bounds } from './lattice-window';
import { turnSign } from './turn-sign';

/** A straight edge from a to b, half micrometres. */
export interface Edge {
  readonly aU: number;
  readonly aV: number;
  readonly bU: number;
  readonly bV: number;
}

/** True where an edge passes through the inside of a rectangle; exact. Running along a side does not count. */
export function edgeCrossesPlace({ aU, aV, bU, bV }: Edge, { fromU, toU, fromV, toV }: Bounds): boolean {
  if (Math.max(aU, bU) <= fromU || Math.min(aU, bU) >= toU) return false;
  if (Math.max(aV, bV) <= fromV || Math.min(aV, bV) >= toV) return false;
  // The rectangle lies on both sides of the edge's line, or the line misses its inside.
  const side = (u: number, v: number) => turnSign(aU, aV, bU, bV, u, v);
  const sides = [side(fromU, fromV), side(toU, fromV), side(fromU, toV), side(toU, toV)];
  return sides.includes(1) && sides.includes(-1);
}
