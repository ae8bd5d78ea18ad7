import type { Wish } from '../../plan/wish';
import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { fromMicrometres, toMicrometres } from '../surfaces/micrometres';
import { hallFit } from './hall-fit';
import { type JudgedWall, surfacePlace, wallField } from './judged-wall';
import { spaceNeeded } from './space-needed';

const hallField = (key: keyof Wish['hall']): Place => ({ kind: 'field', name: `wish.hall.${key}` });

/** All walls with the walkway behind them fit the hall, either way round, and each stands under its clear height. */
export function checkHall(walls: readonly JudgedWall[], hall: Wish['hall']): Check[] {
  return [...checkFloor(walls, hall), ...walls.map((judged) => checkClearHeight(judged, hall))];
}

function checkFloor(walls: readonly JudgedWall[], hall: Wish['hall']): Check[] {
  if (walls.length === 0) return [];
  const needed = spaceNeeded(
    walls.map(({ result }) => result),
    hall.walkwayMm,
  );
  const about = { id: 'walls.hall-fit', chapter: 'walls', unit: 'mm' } as const;
  const values = {
    across: { value: needed.acrossMm, unit: 'mm' },
    along: { value: needed.alongMm, unit: 'mm' },
    walkway: { value: hall.walkwayMm, unit: 'mm' },
  } as const;
  if (hall.lengthMm === null || hall.widthMm === null) {
    return [
      {
        ...about,
        severity: 'offer',
        measured: Math.max(needed.acrossMm, needed.alongMm),
        limit: null,
        where: [hallField('lengthMm'), hallField('widthMm')],
        sentence:
          'Not stated: how long and wide the hall is. The walls ask for {across} by {along}, a walkway of {walkway} behind them included.',
        values,
      },
    ];
  }
  const fit = hallFit(needed, hall.lengthMm, hall.widthMm);
  const asked = 'The walls ask for {across} by {along}, a walkway of {walkway} behind them included';
  return [
    {
      ...about,
      severity: fit.fits ? 'pass' : 'stop',
      measured: fit.neededMm,
      limit: fit.hallMm,
      where: [...walls.map(surfacePlace), hallField('lengthMm'), hallField('widthMm')],
      sentence: fit.fits
        ? `${asked}; the hall has room for it: {limit} where {measured} is needed.`
        : `${asked}. The hall is too small, whichever way round: it has {limit} where {measured} is needed.`,
      values,
    },
  ];
}

function checkClearHeight(judged: JudgedWall, hall: Wish['hall']): Check {
  const { wall, index, result } = judged;
  const topUm = toMicrometres(result.baseMm) + toMicrometres(result.heightMm);
  const top = fromMicrometres(topUm);
  const clear = hall.clearHeightMm;
  const about = {
    id: `walls.clear-height.${wall.letter}`,
    chapter: 'walls',
    measured: top,
    limit: clear,
    unit: 'mm',
    where: [surfacePlace(judged), hallField('clearHeightMm')],
  } as const;
  if (clear === null) {
    const sentence = `Not stated: the clear height of the hall. The top of wall ${wall.letter} is at {measured}.`;
    return { ...about, severity: 'offer', sentence };
  }
  const clearUm = toMicrometres(clear);
  if (topUm <= clearUm) {
    return {
      ...about,
      severity: 'pass',
      sentence: `The top of wall ${wall.letter} is at {measured}, under the clear height of {limit}.`,
    };
  }
  const lower = fromMicrometres(clearUm - toMicrometres(result.heightMm));
  return {
    ...about,
    severity: 'stop',
    where: [...about.where, wallField(judged, 'baseMm')],
    sentence: `The top of wall ${wall.letter} is at {measured}, above the clear height of {limit}.`,
    ...(lower >= 0 && {
      fix: setFieldsFix('Lower its base', `base of wall ${wall.letter}`, [
        { path: ['walls', index, 'baseMm'], value: lower },
      ]),
    }),
  };
}
