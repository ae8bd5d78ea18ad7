import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { checkKnownPanels } from '../surfaces/check-known-panels';
import { type MassesInputs, platePressureKpa } from './compute-masses';
import type { MassesResults, SurfaceMass } from './mass-result';

/** Largest plate worth offering; beyond it the load wants another way to the floor. From memory, common practice. */
const largestPlateM2 = 2;

/** Plates rounded up to whole square decimetres that bring the pressure within what the floor allows; null above the largest. */
function platesFor(frameKg: number, floorKpa: number): number | null {
  if (floorKpa <= 0) return null;
  const needed = Math.ceil(platePressureKpa(frameKg, 1) / floorKpa / 0.01 - 1e-9);
  return needed / 100 > largestPlateM2 ? null : needed / 100;
}

/** Pressure under the plate of the heaviest support frame against what the floor is said to allow. */
function checkFloor({ masses }: MassesInputs, { surfaces }: MassesResults): Check[] {
  const standing = surfaces.filter(
    (surface): surface is SurfaceMass & { frameKg: number; floorKpa: number } => surface.floorKpa !== null,
  );
  const first = standing[0];
  if (first === undefined) return [];
  const worst = standing.reduce((a, b) => (b.floorKpa > a.floorKpa ? b : a), first);
  const common = {
    id: 'masses.floor',
    chapter: 'masses',
    measured: worst.floorKpa,
    limit: masses.floorKpa,
    unit: 'kPa',
    values: { frame: { value: worst.frameKg, unit: 'kg' } },
  } as const;
  if (masses.floorKpa === null) {
    return [
      {
        ...common,
        severity: 'offer',
        where: [
          { kind: 'surface', name: worst.letter },
          { kind: 'field', name: 'masses.floorKpa' },
        ],
        sentence:
          'The heaviest support frame bears {frame} and presses with {measured} under its plate; what the floor allows is not stated. A structural engineer decides.',
      },
    ];
  }
  const limit = masses.floorKpa;
  const above = standing.filter((surface) => surface.floorKpa > limit);
  const plates = above.length > 0 ? platesFor(worst.frameKg, limit) : null;
  return [
    {
      ...common,
      severity: above.length > 0 ? 'stop' : 'pass',
      where: (above.length > 0 ? above : [worst]).map((surface) => ({ kind: 'surface', name: surface.letter })),
      sentence:
        'The heaviest support frame bears {frame} and presses with {measured} under its plate; the floor is said to allow {limit}. A structural engineer decides.',
      ...(plates === null
        ? undefined
        : { fix: setFieldsFix('Larger plates', 'plate area', [{ path: ['masses', 'plateAreaM2'], value: plates }]) }),
    },
  ];
}

export function checkMasses(inputs: MassesInputs, results: MassesResults): Check[] {
  return [
    ...checkKnownPanels(inputs, {
      id: 'masses.panel-unknown',
      chapter: 'masses',
      unit: 'kg',
      sentence: 'The catalogue does not have a panel that stands here; the masses leave it out.',
    }),
    ...checkFloor(inputs, results),
  ];
}
