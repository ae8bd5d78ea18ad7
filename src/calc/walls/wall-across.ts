import type { Wish } from '../../plan/wish';
import type { WallResult } from './wall-result';

/**
 * What a wish calls across: the inside diameter of a ring, or from end to end along the face of a flat wall. Null where a
 * ring is wished and the wall has no inside.
 */
export function wallAcrossMm(
  form: Wish['wall']['form'],
  { insideDiameterMm, frontMm }: Pick<WallResult, 'insideDiameterMm' | 'frontMm'>,
): number | null {
  if (form === 'ring') return insideDiameterMm;
  const last = frontMm.length;
  return Math.hypot(frontMm[last - 2]! - frontMm[0]!, frontMm[last - 1]! - frontMm[1]!);
}
