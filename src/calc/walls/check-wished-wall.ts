import type { Wish } from '../../plan/wish';
import type { Check, Place } from '../chapter';
import { type JudgedWall, surfacePlace } from './judged-wall';
import { turnsHalf } from './turns-half';
import { wallAcrossMm } from './wall-across';

/** A diameter may miss the wish by this share before it is pointed at; 'about 20 m' asks no more (common practice, no source). */
const DIAMETER_SHARE = 0.02;

/** What came out of the stage's first wall, held against what was wished. Wishes that nobody stated make no check. */
export function checkWishedWall(judged: JudgedWall, wished: Wish['wall']): Check[] {
  const { wall, result } = judged;
  const { columnWidthMm, table } = result;
  const rowMm = Math.max(...table.types.map((type) => type.heightMm));
  const isRing = wished.form === 'ring';
  const across = wallAcrossMm(wished.form, result);
  const checks: Check[] = [];
  const hold = (
    key: 'across' | 'height' | 'opening',
    measured: number | null,
    limit: number | null,
    slackMm: number,
    what: string,
  ) => {
    if (limit === null) return;
    const near = measured !== null && Math.abs(measured - limit) <= slackMm;
    const field: Place = { kind: 'field', name: `wish.wall.${key}Mm` };
    checks.push({
      id: `walls.wished-${key}`,
      chapter: 'walls',
      severity: near ? 'pass' : 'watch',
      measured,
      limit,
      unit: 'mm',
      where: [surfacePlace(judged), field],
      sentence:
        measured === null
          ? `Wished: ${what} of {limit}; wall ${wall.letter} has none, as it is shaped.`
          : `Wished: ${what} of {limit}; wall ${wall.letter} comes to {measured}.`,
    });
  };
  const slack = isRing ? Math.max(columnWidthMm, DIAMETER_SHARE * (wished.acrossMm ?? 0)) : columnWidthMm;
  hold('across', across, wished.acrossMm, slack, isRing ? 'an inside diameter' : 'a length');
  hold('height', result.heightMm, wished.heightMm, rowMm, 'a height');
  if (isRing && turnsHalf(result.turnsDeg))
    hold('opening', result.openingMm, wished.openingMm, columnWidthMm, 'an opening');
  return checks;
}
