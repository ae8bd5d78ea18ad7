import type { Mode } from '../../plan/picture';
import type { FrameRate } from '../../plan/primitives';
import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { checkSurfaceNames } from '../surfaces/check-surface-names';
import type { PictureInputs } from './compute-picture';
import { publishedRates } from './published-rates';

/** Slowest and fastest camera rate that the chapter is made for: 24000/1001 to 240 (common practice, no source). */
const slowestFps = 24_000 / 1001;
const fastestFps = 240;
/** A rate this near a published one, but not equal to it, was rounded when it was typed; 24 and 24000/1001 are 1e-3 apart. */
const roundedShare = 3e-4;

interface PlacedMode {
  readonly path: readonly (string | number)[];
  readonly place: Place;
  readonly mode: Mode;
}

/** Surfaces that are not there, rates out of range and rates rounded instead of exact. */
export function checkPicture(inputs: PictureInputs): Check[] {
  const modes = allModes(inputs);
  return [...checkNames(inputs), checkRange(modes), ...checkExact(modes)];
}

function allModes({ picture }: PictureInputs): PlacedMode[] {
  const placed = (path: readonly (string | number)[], text: string, mode: Mode): PlacedMode => ({
    path,
    place: { kind: 'field', name: text },
    mode,
  });
  return [
    placed(['picture', 'base'], 'picture.base.rate', picture.base),
    ...picture.bySurface.map(({ mode }, i) =>
      placed(['picture', 'bySurface', i, 'mode'], `picture.bySurface[${i}].mode.rate`, mode),
    ),
    ...picture.alsoServe.map(({ mode }, i) =>
      placed(['picture', 'alsoServe', i, 'mode'], `picture.alsoServe[${i}].mode.rate`, mode),
    ),
  ];
}

function checkNames({ picture, surfaces }: PictureInputs): Check[] {
  return [
    ...checkSurfaceNames(surfaces, {
      id: 'picture.surface-names',
      chapter: 'picture',
      path: ['picture', 'bySurface'],
      field: 'surfaceId',
      entries: picture.bySurface,
      keep: (own, isThere) => (isThere(own.surfaceId) ? own : null),
      sentence: 'Rates of their own for a surface that is not there: {measured}.',
      called: 'rates by surface',
    }),
    ...checkSurfaceNames(surfaces, {
      id: 'picture.served-names',
      chapter: 'picture',
      path: ['picture', 'alsoServe'],
      field: 'surfaceIds',
      entries: picture.alsoServe,
      keep: (also, isThere) => {
        if (also.surfaceIds === null) return also;
        const surfaceIds = also.surfaceIds.filter(isThere);
        if (surfaceIds.length === 0) return null;
        return surfaceIds.length < also.surfaceIds.length ? { ...also, surfaceIds } : also;
      },
      sentence: 'Rates to be served as well that name no surface, or one that is not there: {measured}.',
      called: 'rates to serve',
    }),
  ];
}

function checkRange(modes: readonly PlacedMode[]): Check {
  const fps = ({ mode }: PlacedMode) => mode.rate.frames / mode.rate.seconds;
  const beyond = modes.filter((placed) => fps(placed) > fastestFps);
  const below = modes.filter((placed) => fps(placed) < slowestFps);
  const odd = [...beyond, ...below];
  const measured = fps(odd[0] ?? modes[0]!);
  return {
    id: 'picture.rate-range',
    chapter: 'picture',
    severity: odd.length > 0 ? 'watch' : 'pass',
    measured,
    limit: below.length > 0 && beyond.length === 0 ? slowestFps : fastestFps,
    unit: 'fps',
    where: (odd.length > 0 ? odd : modes.slice(0, 1)).slice(0, 50).map(({ place }) => place),
    sentence:
      beyond.length > 0
        ? 'A camera rate of {measured} is unusual: stages are fed with up to {limit}.'
        : below.length > 0
          ? 'A camera rate of {measured} is unusual: stages are fed with {limit} or more.'
          : 'Every camera rate is a usual one; the stage runs at {measured}.',
  };
}

function checkExact(modes: readonly PlacedMode[]): Check[] {
  const rounded = modes.flatMap((placed) => {
    const exact = nearlyPublished(placed.mode.rate);
    return exact === null ? [] : [{ placed, exact }];
  });
  const first = rounded[0];
  if (first === undefined) return [];
  return [
    {
      id: 'picture.rate-exact',
      chapter: 'picture',
      severity: 'watch',
      measured: first.placed.mode.rate.frames / first.placed.mode.rate.seconds,
      limit: first.exact.frames / first.exact.seconds,
      unit: 'fps',
      where: rounded.slice(0, 50).map(({ placed }) => placed.place),
      sentence: 'The rate {measured} stands near the published rate {limit} and is not equal to it: it looks rounded.',
      fix: setFieldsFix(
        'Take the exact rate',
        'frame rate',
        rounded.map(({ placed, exact }) => ({ path: [...placed.path, 'rate'], value: exact })),
      ),
    },
  ];
}

/** The published rate that a rate is near but not equal to; null where it equals one or is near none. */
function nearlyPublished(rate: FrameRate): FrameRate | null {
  const equals = (other: FrameRate) => rate.frames * other.seconds === other.frames * rate.seconds;
  if (publishedRates.some(equals)) return null;
  const fps = rate.frames / rate.seconds;
  return publishedRates.find(({ frames, seconds }) => Math.abs((fps * seconds) / frames - 1) < roundedShare) ?? null;
}
