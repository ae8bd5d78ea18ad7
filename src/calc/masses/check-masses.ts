import type { Check } from '../chapter';
import type { MassesInputs } from './compute-masses';
import type { MassesResults, SurfaceMass } from './mass-result';

/** Floor pressure under the heaviest frame of each standing wall, against what the floor is stated to bear. */
export function checkMasses({ masses }: MassesInputs, results: MassesResults): Check[] {
  return results.surfaces.flatMap((surface) =>
    surface.floorKpa === null ? [] : [checkFloor(surface, surface.floorKpa, masses.floorKpa)],
  );
}

function checkFloor({ letter }: SurfaceMass, floorKpa: number, limit: number | null): Check {
  const base = {
    id: `masses.floor.${letter}`,
    chapter: 'masses' as const,
    measured: floorKpa,
    limit,
    unit: 'kPa' as const,
    where: [{ kind: 'surface' as const, name: letter }],
  };
  if (limit === null) {
    return {
      ...base,
      severity: 'offer',
      where: [...base.where, { kind: 'field', name: 'masses.floorKpa' }],
      sentence: 'The heaviest frame presses {measured} on the floor; what the floor bears is not stated.',
    };
  }
  return floorKpa > limit
    ? {
        ...base,
        severity: 'stop',
        sentence:
          'The heaviest frame presses {measured} on a floor stated to bear {limit}: use larger plates or more frames, and ask a structural engineer.',
      }
    : {
        ...base,
        severity: 'pass',
        sentence:
          'The heaviest frame presses {measured} on a floor stated to bear {limit}; a structural engineer decides.',
      };
}
