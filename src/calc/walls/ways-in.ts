import { pathText } from '../../plan/commands/path-text';
import type { JudgedWall } from './judged-wall';
import { stackBands } from './stack-bands';
import { placeHoles } from './wall-holes';

/** A way through a wall at floor level. */
export interface WayIn {
  readonly kind: 'opening' | 'door';
  readonly widthMm: number;
  /** Null where nothing of the wall stands over it. */
  readonly heightMm: number | null;
  /** Path of the hole in the plan; null for the opening. */
  readonly field: string | null;
}

/** The opening of a ring, and every hole that reaches down to the floor. A hole of several columns is as wide as its chord. */
export function waysIn({ index, wall, result, shapes }: JudgedWall): readonly WayIn[] {
  const { frontMm } = result;
  const opening: WayIn[] =
    result.openingMm === null ? [] : [{ kind: 'opening', widthMm: result.openingMm, heightMm: null, field: null }];
  if (wall.baseMm > 0) return opening;
  const { lowerEdgeMm } = stackBands(wall.bands, shapes);
  const doors = placeHoles(wall).flatMap((hole): WayIn[] => {
    if (hole.fromRow > 0 || hole.toColumn === hole.fromColumn) return [];
    const left = hole.fromColumn * 4;
    const right = (hole.toColumn - 1) * 4 + 2;
    return [
      {
        kind: 'door',
        widthMm: Math.sqrt((frontMm[right]! - frontMm[left]!) ** 2 + (frontMm[right + 1]! - frontMm[left + 1]!) ** 2),
        heightMm: hole.toRow === result.rows ? null : lowerEdgeMm[hole.toRow]!,
        field: pathText(['walls', index, 'holes', hole.index]),
      },
    ];
  });
  return [...opening, ...doors];
}
