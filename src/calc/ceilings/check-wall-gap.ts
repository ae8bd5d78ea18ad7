import type { Ceiling } from '../../plan/ceiling';
import type { Check } from '../chapter';
import type { PanelShape } from '../panels/panel-views';
import { setFieldsFix } from '../set-fields-fix';
import { turnsHalf } from '../walls/turns-half';
import type { WallResult } from '../walls/wall-result';
import { ceilingAxes } from './ceiling-axes';
import { drawIn } from './draw-in';
import { ceilingField, type JudgedCeiling, surfacePlace } from './judged-ceiling';
import { latticeCeiling } from './lattice-ceiling';
import { wallGap } from './wall-gap';

/** The gap between wall and ceiling as it is usually left (common practice, no source). */
const USUAL_LEAST_MM = 150;
const USUAL_MOST_MM = 300;

/**
 * The gap to every wall beside which the ceiling comes anywhere on its travel: none is touched, and each is as wide as
 * usual. Walls that are all below or above the travel do not count.
 */
export function checkWallGap(
  judged: JudgedCeiling,
  shapes: ReadonlyMap<string, PanelShape>,
  walls: readonly WallResult[],
): Check[] {
  const { ceiling, result } = judged;
  const laid = latticeCeiling(ceiling, shapes, result.table.count);
  if ('kind' in laid) return [];
  const axes = ceilingAxes(ceiling.place);
  return walls
    .filter((wall) => passes(ceiling, result.table.types[0]!.depthMm, wall))
    .flatMap((wall) => {
      const gap = wallGap(laid.clipped, laid.lattice, axes, wall.frontMm);
      if (gap === null) return [];
      const isRound = wall.turnsDeg > 0 && turnsHalf(wall.turnsDeg);
      // A flat wall or a shallow arc is not beside the ceiling unless it is near.
      if (!isRound && gap.least.distance > USUAL_MOST_MM) return [];
      return [
        checkLeast(judged, shapes, wall, gap.least.distance),
        ...(isRound ? [checkGreatest(judged, wall, gap.greatest.distance)] : []),
      ];
    });
}

/** True where the panels of the ceiling come beside the wall somewhere between the lowest and the highest they travel. */
function passes({ height }: Ceiling, depthMm: number, { baseMm, heightMm }: WallResult): boolean {
  const lowest = Math.min(height.lowestMm, height.trimMm);
  const highest = Math.max(height.highestMm, height.trimMm) + depthMm;
  return lowest < baseMm + heightMm && highest > baseMm;
}

function checkLeast(
  { ceiling, index }: JudgedCeiling,
  shapes: ReadonlyMap<string, PanelShape>,
  wall: WallResult,
  leastMm: number,
): Check {
  const severity = leastMm <= 0 ? 'stop' : leastMm < USUAL_LEAST_MM ? 'watch' : 'pass';
  const fields = severity === 'pass' ? null : drawIn(ceiling, index, shapes, wall.frontMm, USUAL_LEAST_MM);
  const said = {
    stop: `Ceiling ${ceiling.letter} runs into wall ${wall.letter} on its travel: they meet in plan.`,
    watch: `Ceiling ${ceiling.letter} passes wall ${wall.letter} at {measured}, nearer than the usual {limit}.`,
    pass: `Ceiling ${ceiling.letter} keeps {measured} from wall ${wall.letter} all along its travel; {limit} is usual.`,
  };
  return {
    id: `ceilings.gap.${ceiling.letter}.${wall.letter}`,
    chapter: 'ceilings',
    severity,
    measured: leastMm,
    limit: USUAL_LEAST_MM,
    unit: 'mm',
    where: [surfacePlace(ceiling), surfacePlace(wall), ceilingField(index, 'outline')],
    sentence: said[severity],
    ...(fields !== null && {
      fix: setFieldsFix('Draw its outline in', `outline of ceiling ${ceiling.letter}`, fields),
    }),
  };
}

function checkGreatest({ ceiling, index }: JudgedCeiling, wall: WallResult, greatestMm: number): Check {
  const wide = greatestMm > USUAL_MOST_MM;
  return {
    id: `ceilings.gap-width.${ceiling.letter}.${wall.letter}`,
    chapter: 'ceilings',
    severity: wide ? 'offer' : 'pass',
    measured: greatestMm,
    limit: USUAL_MOST_MM,
    unit: 'mm',
    where: [surfacePlace(ceiling), surfacePlace(wall), ceilingField(index, 'outline')],
    sentence: wide
      ? `The gap between ceiling ${ceiling.letter} and wall ${wall.letter} opens to {measured}; up to {limit} is usual.`
      : `The gap between ceiling ${ceiling.letter} and wall ${wall.letter} is {measured} at its widest; up to {limit} is usual.`,
  };
}
