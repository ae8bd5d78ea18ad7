import type { Wish } from '../../plan/wish';
import { degrees, toRadians } from '../../units/angle';
import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { type JudgedWall, surfacePlace, wallField } from './judged-wall';
import { turnsHalf } from './turns-half';
import { type WayIn, waysIn } from './ways-in';

type Vehicle = Wish['vehicle'];

const vehicleField = (key: keyof Vehicle): Place => ({ kind: 'field', name: `wish.vehicle.${key}` });

/** A wall that closes round a middle has a way in, wide and high enough for what must drive in. */
export function checkWayIn(judged: JudgedWall, vehicle: Vehicle): Check[] {
  const { result } = judged;
  if (!(result.turnsDeg > 0 && turnsHalf(result.turnsDeg))) return [];
  const ways = waysIn(judged);
  const best = ways.reduce((most, one) => (shortOf(one, vehicle) < shortOf(most, vehicle) ? one : most), ways[0]!);
  return [checkWidth(judged, best, vehicle), ...checkHeight(judged, best, vehicle)];
}

/** How far a way is from letting the vehicle through, as a share of what is asked; wider ways first where all do. */
function shortOf({ widthMm, heightMm }: WayIn, vehicle: Vehicle): number {
  const width = vehicle.widthMm === null ? 0 : Math.max(0, 1 - widthMm / vehicle.widthMm);
  const height = vehicle.heightMm === null || heightMm === null ? 0 : Math.max(0, 1 - heightMm / vehicle.heightMm);
  return Math.max(width, height) - 1e-9 * Math.min(1, widthMm / 1e6);
}

function checkWidth(judged: JudgedWall, way: WayIn, vehicle: Vehicle): Check {
  const { wall } = judged;
  const named = way.kind === 'door' ? 'door' : 'opening';
  const about = {
    id: `walls.way-in-width.${wall.letter}`,
    chapter: 'walls',
    measured: way.widthMm,
    limit: vehicle.widthMm,
    unit: 'mm',
    where: [surfacePlace(judged), ...wayField(judged, way), vehicleField('widthMm')],
  } as const;
  if (vehicle.widthMm === null) {
    const sentence = `Not stated: how wide what must drive in is. The ${named} of wall ${wall.letter} is {measured} wide.`;
    return { ...about, severity: 'offer', sentence };
  }
  if (way.widthMm >= vehicle.widthMm) {
    const sentence = `The ${named} of wall ${wall.letter} is {measured} wide; what must drive in is {limit}.`;
    return { ...about, severity: 'pass', sentence };
  }
  const columns = columnsThatOpen(judged, vehicle.widthMm);
  return {
    ...about,
    severity: 'stop',
    sentence: `The widest way into wall ${wall.letter} is {measured}; what must drive in is {limit} wide.`,
    ...(columns !== null && {
      fix: setFieldsFix('Leave out columns', `columns of wall ${wall.letter}`, [
        { path: ['walls', judged.index, 'path', 0, 'columns'], value: columns },
      ]),
    }),
  };
}

function checkHeight(judged: JudgedWall, way: WayIn, vehicle: Vehicle): Check[] {
  const { wall } = judged;
  if (way.heightMm === null) return [];
  const about = {
    id: `walls.way-in-height.${wall.letter}`,
    chapter: 'walls',
    measured: way.heightMm,
    limit: vehicle.heightMm,
    unit: 'mm',
    where: [surfacePlace(judged), ...wayField(judged, way), vehicleField('heightMm')],
  } as const;
  if (vehicle.heightMm === null) {
    const sentence = `Not stated: how high what must drive in is. The door of wall ${wall.letter} is {measured} high.`;
    return [{ ...about, severity: 'offer', sentence }];
  }
  const enough = way.heightMm >= vehicle.heightMm;
  return [
    {
      ...about,
      severity: enough ? 'pass' : 'stop',
      sentence: enough
        ? `The door of wall ${wall.letter} is {measured} high; what must drive in is {limit}.`
        : `The best way into wall ${wall.letter} is a door {measured} high; what must drive in is {limit} high.`,
    },
  ];
}

const wayField = (judged: JudgedWall, way: WayIn): Place[] =>
  way.field === null ? [wallField(judged, 'path')] : [{ kind: 'field', name: way.field }];

/** Columns of a wall of one even segment whose opening lets a width through; null for other walls, and where none does. */
function columnsThatOpen({ wall, result }: JudgedWall, widthMm: number): number | null {
  const [segment, more] = wall.path;
  if (segment === undefined || more !== undefined || segment.mixed !== null || !(segment.jointDeg > 0)) return null;
  const radius = result.columnWidthMm / (2 * Math.sin(toRadians(degrees(segment.jointDeg / 2))));
  for (let columns = segment.columns - 1; turnsHalf((columns - 1) * segment.jointDeg); columns--) {
    const missingDeg = 360 - columns * segment.jointDeg;
    if (2 * radius * Math.sin(toRadians(degrees(missingDeg / 2))) >= widthMm) return columns;
  }
  return null;
}
