import type { Check } from '../chapter';
import type { WallResult } from '../walls/wall-result';
import { firstRing } from './first-ring';
import { type JudgedCeiling, surfacePlace } from './judged-ceiling';

/** A ring that turns this far leaves one way out, if any (common practice, no source). */
const NEARLY_CLOSED_DEG = 270;

/** A nearly closed ring under a ceiling is a room of its own: how people leave it, and what sees smoke in it, changes. */
export function checkRingCover({ ceiling, result }: JudgedCeiling, walls: readonly WallResult[]): Check[] {
  const ring = firstRing(walls);
  if (ring === null || ring.wall.turnsDeg < NEARLY_CLOSED_DEG || !(result.coverShare !== null && result.coverShare > 0))
    return [];
  return [
    {
      id: `ceilings.escape.${ceiling.letter}`,
      chapter: 'ceilings',
      severity: 'watch',
      measured: ring.wall.openingMm,
      limit: null,
      unit: 'mm',
      where: [surfacePlace(ceiling), surfacePlace(ring.wall)],
      sentence: `Wall ${ring.wall.letter} all but closes round the floor, with an opening of {measured}, and ceiling ${ceiling.letter} covers {cover} of it. That changes exits, emergency light, smoke detection and sprinkler cover: show the exits and ask the fire authority.`,
      values: { cover: { value: result.coverShare, unit: 'share' } },
    },
  ];
}
