import type { Wish } from '../../plan/wish';
import type { JudgedWall } from './judged-wall';
import { turnsHalf } from './turns-half';
import { waysIn } from './ways-in';

/** True where what must drive in gets in: by a way wide and high enough, or since the wall closes round nothing. */
export function letsIn(judged: JudgedWall, { widthMm, heightMm }: Wish['vehicle']): boolean {
  const { turnsDeg } = judged.result;
  if (!(turnsDeg > 0 && turnsHalf(turnsDeg))) return true;
  return waysIn(judged).some(
    (way) =>
      (widthMm === null || way.widthMm >= widthMm) &&
      (heightMm === null || way.heightMm === null || way.heightMm >= heightMm),
  );
}
