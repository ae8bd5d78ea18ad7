import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { type JudgedWall, surfacePlace, wallField } from './judged-wall';

/** Segments that mix more joints of the other angle than they have joints: all of theirs take it then. */
export function checkMixedJoints(judged: JudgedWall): Check[] {
  const { wall, index } = judged;
  const over = wall.path.flatMap(({ columns, mixed }, s) =>
    mixed !== null && mixed.count > columns - 1 ? [{ s, own: columns - 1, mixed }] : [],
  );
  const worst = over.reduce<(typeof over)[number] | null>(
    (most, one) => (most === null || one.mixed.count - one.own > most.mixed.count - most.own ? one : most),
    null,
  );
  if (worst === null) return [];
  return [
    {
      id: `walls.mixed-joints.${wall.letter}`,
      chapter: 'walls',
      severity: 'watch',
      measured: worst.mixed.count,
      limit: worst.own,
      unit: 'count',
      where: [surfacePlace(judged), ...over.map(({ s }) => wallField(judged, 'path', s, 'mixed'))].slice(0, 50),
      sentence: `A segment of wall ${wall.letter} asks for more joints of its other angle, {measured}, than it has joints, {limit}; all of them take it.`,
      fix: setFieldsFix(
        'Mix in as many as there are',
        `mixed joints of wall ${wall.letter}`,
        over.map(({ s, own, mixed }) => ({
          path: ['walls', index, 'path', s, 'mixed'],
          value: own > 0 ? { ...mixed, count: own } : null,
        })),
      ),
    },
  ];
}
