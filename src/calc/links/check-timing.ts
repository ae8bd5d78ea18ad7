import type { Mode } from '../../plan/picture';
import type { Check } from '../chapter';
import { fedRate } from '../picture/fed-rate';
import { setFieldsFix } from '../set-fields-fix';
import type { SurfaceTable } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import { computeLinks, type LinksInputs } from './compute-links';
import type { LinksResults, SurfaceLinks } from './link-result';
import { mendLink } from './mend-link';
import type { NoTiming } from './time-canvas';
import type { VideoTiming } from './video-timing';

/** A rate that is farther off than this slips against camera and reference within minutes (common practice, no source). */
const nearShare = 1e-4;

const reasons: Readonly<Record<NoTiming, string>> = {
  'too-fast': 'a frame is shorter than its least blanking',
  'no-mode-of-this-size': 'CTA-861 has no mode of this size',
  'no-mode-at-this-rate': 'no mode that holds it runs at a rate that must be served',
  'unknown-container': 'the fixed mode chosen is not in the table',
  'too-small': 'no fixed mode of those allowed holds it',
};

/** Whether a surface's canvas has a timing of the kind chosen at every served mode, and comes out at the rate asked for. */
export function checkTiming(
  inputs: LinksInputs,
  results: LinksResults,
  table: SurfaceTable,
  links: SurfaceLinks,
): Check[] {
  const { canvas, timing, noTiming, mode } = links;
  const words = surfaceWords(table);
  const where = [{ kind: 'surface' as const, name: table.letter }];
  if (noTiming !== null) {
    const fix = mendLink(inputs, results, links.surfaceId);
    return [
      {
        id: `links.timing.${table.letter}`,
        chapter: 'links',
        severity: 'stop',
        measured: canvas!.width * canvas!.height,
        limit: null,
        unit: 'px',
        where,
        sentence: `The canvas of ${words}, {wide} by {high} pixels, has no timing of the kind chosen: ${reasons[noTiming]}.`,
        values: { wide: { value: canvas!.width, unit: 'count' }, high: { value: canvas!.height, unit: 'count' } },
        ...(fix === null ? {} : { fix }),
      },
    ];
  }
  if (timing === null) return [];
  const asked = rateOf(mode);
  const measured = timedRate(timing);
  const isNear = isNearRate(timing, mode);
  return [
    {
      id: `links.rate.${table.letter}`,
      chapter: 'links',
      severity: isNear ? 'pass' : 'watch',
      measured,
      limit: asked,
      unit: 'fps',
      where,
      sentence: isNear
        ? `The picture of ${words} comes out at {measured} for the {limit} asked.`
        : `The picture of ${words} comes out at {measured} for the {limit} asked: unless its clock follows the reference it slips a frame every {slip}.`,
      ...(isNear ? {} : { values: { slip: { value: 1 / Math.abs(measured - asked), unit: 's' as const } } }),
      ...(isNear || !leastBlankingHelps(inputs, results, links.surfaceId)
        ? {}
        : {
            fix: setFieldsFix('Use the least blanking', 'timing', [{ path: ['feed', 'timing'], value: 'reduced-2' }]),
          }),
    },
  ];
}

function rateOf(mode: Mode): number {
  const { frames, seconds } = fedRate(mode);
  return frames / seconds;
}

function timedRate({ pixelClockHz, totalWidth, totalHeight }: VideoTiming): number {
  return pixelClockHz / totalWidth / totalHeight;
}

function isNearRate(timing: VideoTiming, mode: Mode): boolean {
  return Math.abs(timedRate(timing) / rateOf(mode) - 1) <= nearShare;
}

/** Whether a surface's rate comes out near with the least blanking, and no surface loses the link that carries it. */
function leastBlankingHelps(inputs: LinksInputs, before: LinksResults, surfaceId: string): boolean {
  if (inputs.timing === 'reduced-2') return false;
  const after = computeLinks({ ...inputs, timing: 'reduced-2' });
  const own = after.surfaces.find((links) => links.surfaceId === surfaceId);
  return (
    own?.timing != null &&
    isNearRate(own.timing, own.mode) &&
    after.surfaces.every(({ chosen }, i) => chosen?.fits === true || before.surfaces[i]!.chosen?.fits !== true)
  );
}
