import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { allowedJoints, isAllowedJoint, nearestJoint } from './allowed-joints';
import { type JudgedWall, surfacePlace, wallField } from './judged-wall';

interface JointField {
  readonly path: readonly (string | number)[];
  readonly jointDeg: number;
}

/** Every joint that the wall has is one that the locks of all its panels take. */
export function checkJoints(judged: JudgedWall): Check[] {
  const { wall, index, shapes } = judged;
  const panels = [...new Set(wall.bands.map((band) => band.panelId))].map((id) => shapes.get(id)!);
  const allowed = allowedJoints(panels);
  const about = { id: `walls.joints.${wall.letter}`, chapter: 'walls', unit: 'deg' } as const;
  const joints = jointsInUse(judged);
  const widest = joints.reduce((most, { jointDeg }) => (Math.abs(jointDeg) > Math.abs(most) ? jointDeg : most), 0);
  if (allowed === null) {
    return [
      {
        ...about,
        severity: 'offer',
        measured: widest,
        limit: null,
        where: [surfacePlace(judged)],
        sentence: `Not stated: the joint angles that the lock of the panels of wall ${wall.letter} takes. Its widest joint is {measured}.`,
      },
    ];
  }
  const misses = joints.filter(({ jointDeg }) => !isAllowedJoint(allowed, jointDeg));
  if (misses.length === 0) {
    return [
      {
        ...about,
        severity: 'pass',
        measured: widest,
        limit: nearestJoint(allowed, widest),
        where: [surfacePlace(judged)],
        sentence: `Every joint of wall ${wall.letter} is one that the lock of its panels takes; the widest is {measured}.`,
      },
    ];
  }
  const missBy = ({ jointDeg }: JointField) => Math.abs(jointDeg - (nearestJoint(allowed, jointDeg) ?? 0));
  const worst = misses.reduce((most, one) => (missBy(one) > missBy(most) ? one : most));
  const nearest = nearestJoint(allowed, worst.jointDeg);
  return [
    {
      ...about,
      severity: 'stop',
      measured: worst.jointDeg,
      limit: nearest,
      where: [surfacePlace(judged), ...misses.map(({ path }): Place => wallField(judged, ...path))].slice(0, 50),
      sentence:
        nearest === null
          ? `The panels of wall ${wall.letter} have no joint angle in common; it asks for {measured}.`
          : `Wall ${wall.letter} asks for a joint of {measured}, which the lock of its panels does not take; the nearest is {limit}.`,
      ...(nearest !== null && {
        fix: setFieldsFix(
          'Take the nearest joints of the lock',
          `joints of wall ${wall.letter}`,
          misses.map(({ path, jointDeg }) => ({
            path: ['walls', index, ...path],
            value: nearestJoint(allowed, jointDeg),
          })),
        ),
      }),
    },
  ];
}

/** The fields of the path that joints of the wall take their angle from. */
function jointsInUse({ wall }: JudgedWall): JointField[] {
  return wall.path.flatMap(({ columns, jointDeg, mixed, jointBeforeDeg }, s) => {
    const own = columns - 1;
    const fields: JointField[] = [];
    if (s > 0) fields.push({ path: ['path', s, 'jointBeforeDeg'], jointDeg: jointBeforeDeg });
    if (own > (mixed?.count ?? 0)) fields.push({ path: ['path', s, 'jointDeg'], jointDeg });
    if (own > 0 && mixed !== null) fields.push({ path: ['path', s, 'mixed', 'jointDeg'], jointDeg: mixed.jointDeg });
    return fields;
  });
}
