import { boxRound } from './box-round';
import type { WallResult } from './wall-result';

/** What walls ask of the floor, plan axes, their walkways included. */
export interface SpaceNeeded {
  readonly acrossMm: number;
  readonly alongMm: number;
}

/**
 * Smallest upright box round the walls and the walkway behind their back edges: each back corner moved out by the
 * walkway, square to its column. The audience's side and the ends of a wall ask for none. Zeros without walls.
 */
export function spaceNeeded(walls: readonly WallResult[], walkwayMm: number): SpaceNeeded {
  const corners = walls.flatMap(({ frontMm, backMm }) => [frontMm, walkwayEdge(frontMm, backMm, walkwayMm)]);
  const { leftMm, rightMm, frontMm, backMm } = boxRound(corners);
  return { acrossMm: rightMm - leftMm, alongMm: backMm - frontMm };
}

function walkwayEdge(frontMm: Float64Array, backMm: Float64Array, walkwayMm: number): Float64Array {
  const edge = new Float64Array(backMm.length);
  for (let c = 0; c < backMm.length; c += 4) {
    const alongX = frontMm[c + 2]! - frontMm[c]!;
    const alongY = frontMm[c + 3]! - frontMm[c + 1]!;
    const width = Math.sqrt(alongX * alongX + alongY * alongY);
    const outX = (-alongY / width) * walkwayMm;
    const outY = (alongX / width) * walkwayMm;
    for (const i of [0, 2]) {
      edge[c + i] = backMm[c + i]! + outX;
      edge[c + i + 1] = backMm[c + i + 1]! + outY;
    }
  }
  return edge;
}
