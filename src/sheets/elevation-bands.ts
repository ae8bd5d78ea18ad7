import type { WallResult } from '../calc/walls/wall-result';
import { rowEdgesMm } from './elevation-walls';

/** Heights at which the bands of a wall begin, and its top: rows of one height in a row are one band. */
export function bandsOf(wall: Pick<WallResult, 'table'>): readonly number[] {
  const edges = rowEdgesMm(wall);
  const bands = [edges[0]!];
  for (let row = 1; row < edges.length - 1; row++) {
    const [below, above] = [edges[row]! - edges[row - 1]!, edges[row + 1]! - edges[row]!];
    if (Math.abs(below - above) > 0.5) bands.push(edges[row]!);
  }
  return [...bands, edges.at(-1)!];
}
