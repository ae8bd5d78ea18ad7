import type { WallResult } from './wall-result';

/** Smallest upright box round corners given as x y x y ...; all zero for none. */
export function boxRound(corners: readonly Float64Array[]): WallResult['box'] {
  let leftMm = Number.POSITIVE_INFINITY;
  let rightMm = Number.NEGATIVE_INFINITY;
  let frontMm = Number.POSITIVE_INFINITY;
  let backMm = Number.NEGATIVE_INFINITY;
  for (const points of corners) {
    for (let i = 0; i < points.length; i += 2) {
      leftMm = Math.min(leftMm, points[i]!);
      rightMm = Math.max(rightMm, points[i]!);
      frontMm = Math.min(frontMm, points[i + 1]!);
      backMm = Math.max(backMm, points[i + 1]!);
    }
  }
  return leftMm <= rightMm ? { leftMm, rightMm, frontMm, backMm } : { leftMm: 0, rightMm: 0, frontMm: 0, backMm: 0 };
}
