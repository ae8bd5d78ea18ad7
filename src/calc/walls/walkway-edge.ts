import { boxRound } from './box-round';
import type { WallResult } from './wall-result';

/** Outer edge of the walkway behind a wall, x y x y ..: the back corners of each column, left then right, moved out square to it. */
export function walkwayEdge(
  { frontMm, backMm }: Pick<WallResult, 'frontMm' | 'backMm'>,
  walkwayMm: number,
): Float64Array {
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

/** Smallest upright box round walls and the walkways behind them, plan axes; zeros without walls. */
export function walkwayBox(walls: readonly WallResult[], walkwayMm: number): WallResult['box'] {
  return boxRound(walls.flatMap((wall) => [wall.frontMm, walkwayEdge(wall, walkwayMm)]));
}
