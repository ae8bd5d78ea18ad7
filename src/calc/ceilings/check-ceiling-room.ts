import type { Ceiling } from '../../plan/ceiling';
import type { Wish } from '../../plan/wish';
import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { fromMicrometres, toMicrometres } from '../surfaces/micrometres';
import { ceilingField, type JudgedCeiling, surfacePlace } from './judged-ceiling';

/** Under a face lower than this people walk with their heads near it (from memory, common practice, no source). */
const LOW_FACE_MM = 2500;

/** The heights of a ceiling: in order, under the hall's clear height, over people, over what must drive in. */
export function checkCeilingRoom(judged: JudgedCeiling, hall: Wish['hall'], vehicle: Wish['vehicle']): Check[] {
  return [
    checkTravel(judged),
    checkClearHeight(judged, hall),
    ...checkPeople(judged),
    ...checkVehicle(judged, vehicle),
  ];
}

const heightField = (index: number, key: keyof Ceiling['height']): Place => ceilingField(index, 'height', key);

function checkTravel({ ceiling, index }: JudgedCeiling): Check {
  const { trimMm, lowestMm, highestMm } = ceiling.height;
  const inOrder = lowestMm <= trimMm && trimMm <= highestMm;
  const about = {
    id: `ceilings.travel.${ceiling.letter}`,
    chapter: 'ceilings',
    measured: trimMm,
    limit: trimMm > highestMm ? highestMm : lowestMm,
    unit: 'mm',
    values: { lowest: { value: lowestMm, unit: 'mm' }, highest: { value: highestMm, unit: 'mm' } },
  } as const;
  if (inOrder) {
    return {
      ...about,
      severity: 'pass',
      where: [surfacePlace(ceiling)],
      sentence: `The trim of ceiling ${ceiling.letter}, {measured}, lies within its travel from {lowest} to {highest}.`,
    };
  }
  return {
    ...about,
    severity: 'stop',
    where: [
      surfacePlace(ceiling),
      heightField(index, 'trimMm'),
      heightField(index, 'lowestMm'),
      heightField(index, 'highestMm'),
    ],
    sentence: `The trim of ceiling ${ceiling.letter}, {measured}, lies outside its travel from {lowest} to {highest}.`,
    fix: setFieldsFix('Stretch the travel to the trim', `travel of ceiling ${ceiling.letter}`, [
      { path: ['ceilings', index, 'height', 'lowestMm'], value: Math.min(lowestMm, trimMm) },
      { path: ['ceilings', index, 'height', 'highestMm'], value: Math.max(highestMm, trimMm) },
    ]),
  };
}

function checkClearHeight({ ceiling, index, result }: JudgedCeiling, hall: Wish['hall']): Check {
  const { trimMm, lowestMm, highestMm } = ceiling.height;
  const depthUm = toMicrometres(Math.max(0, ...result.table.types.map((type) => type.depthMm)));
  const topUm = toMicrometres(Math.max(trimMm, highestMm, lowestMm)) + depthUm;
  const about = {
    id: `ceilings.clear-height.${ceiling.letter}`,
    chapter: 'ceilings',
    measured: fromMicrometres(topUm),
    limit: hall.clearHeightMm,
    unit: 'mm',
    where: [surfacePlace(ceiling), heightField(index, 'highestMm'), { kind: 'field', name: 'wish.hall.clearHeightMm' }],
  } as const;
  if (hall.clearHeightMm === null) {
    const sentence = `Not stated: the clear height of the hall. The panels of ceiling ${ceiling.letter} reach up to {measured}, what carries them not counted.`;
    return { ...about, severity: 'offer', sentence };
  }
  const clearUm = toMicrometres(hall.clearHeightMm);
  if (topUm <= clearUm) {
    const sentence = `At its highest the panels of ceiling ${ceiling.letter} reach up to {measured}, what carries them not counted; the hall is clear up to {limit}.`;
    return { ...about, severity: 'pass', sentence };
  }
  const most = fromMicrometres(clearUm - depthUm);
  const lowered = (heightMm: number) => Math.min(heightMm, most);
  return {
    ...about,
    severity: 'stop',
    sentence: `At its highest the panels of ceiling ${ceiling.letter} reach up to {measured}, above the clear height of {limit}.`,
    ...(most >= 0 && {
      fix: setFieldsFix('Lower its travel', `travel of ceiling ${ceiling.letter}`, [
        { path: ['ceilings', index, 'height', 'trimMm'], value: lowered(trimMm) },
        { path: ['ceilings', index, 'height', 'lowestMm'], value: lowered(lowestMm) },
        { path: ['ceilings', index, 'height', 'highestMm'], value: lowered(highestMm) },
      ]),
    }),
  };
}

function checkPeople({ ceiling, index }: JudgedCeiling): Check[] {
  const least = Math.min(ceiling.height.trimMm, ceiling.height.lowestMm);
  if (least >= LOW_FACE_MM) return [];
  return [
    {
      id: `ceilings.low-trim.${ceiling.letter}`,
      chapter: 'ceilings',
      severity: 'watch',
      measured: least,
      limit: LOW_FACE_MM,
      unit: 'mm',
      where: [surfacePlace(ceiling), heightField(index, 'lowestMm')],
      sentence: `Ceiling ${ceiling.letter} comes down to {measured}, below {limit}: keep people from under it while it moves, and have a qualified rigger say what it hangs by.`,
    },
  ];
}

function checkVehicle({ ceiling, index }: JudgedCeiling, vehicle: Wish['vehicle']): Check[] {
  if (vehicle.heightMm === null) return [];
  const highest = Math.max(ceiling.height.trimMm, ceiling.height.highestMm);
  const enough = highest >= vehicle.heightMm;
  return [
    {
      id: `ceilings.vehicle.${ceiling.letter}`,
      chapter: 'ceilings',
      severity: enough ? 'pass' : 'watch',
      measured: highest,
      limit: vehicle.heightMm,
      unit: 'mm',
      where: [surfacePlace(ceiling), heightField(index, 'highestMm'), { kind: 'field', name: 'wish.vehicle.heightMm' }],
      sentence: enough
        ? `What must drive in, {limit} high, passes under ceiling ${ceiling.letter} at its highest, {measured}.`
        : `What must drive in, {limit} high, does not pass under ceiling ${ceiling.letter} even at its highest, {measured}.`,
    },
  ];
}
