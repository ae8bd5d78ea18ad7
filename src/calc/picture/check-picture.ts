import type { Mode } from '../../plan/picture';
import type { FrameRate } from '../../plan/primitives';
import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
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

/** Surfaces that are not there, surfaces named twice, rates out of range and rates rounded instead of exact. */
export function checkPicture(inputs: PictureInputs): Check[] {
  const modes = allModes(inputs);
  return [...checkNames(inputs), ...checkServedNames(inputs), checkRange(modes), ...checkExact(modes)];
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
  const known = new Set(surfaces.surfaces.map(({ surfaceId }) => surfaceId));
  const taken = new Set<string>();
  const idle: Place[] = [];
  const kept = picture.bySurface.filter(({ surfaceId }, i) => {
    const counts = known.has(surfaceId) && !taken.has(surfaceId);
    taken.add(surfaceId);
    if (!counts) idle.push({ kind: 'field', name: `picture.bySurface[${i}].surfaceId` });
    return counts;
  });
  if (idle.length === 0) return [];
  return [
    {
      id: 'picture.surface-names',
      chapter: 'picture',
      severity: 'watch',
      measured: idle.length,
      limit: 0,
      unit: 'count',
      where: idle.slice(0, 50),
      sentence: 'Rates of their own that name no surface, or one that has a rate of its own already: {measured}.',
      fix: setFieldsFix('Drop what names no surface', 'rates by surface', [
        { path: ['picture', 'bySurface'], value: kept },
      ]),
    },
  ];
}

function checkServedNames({ picture, surfaces }: PictureInputs): Check[] {
  const known = new Set(surfaces.surfaces.map(({ surfaceId }) => surfaceId));
  const idle: Place[] = [];
  const kept = picture.alsoServe.flatMap((also, i) => {
    if (also.surfaceIds === null) return [also];
    const surfaceIds = also.surfaceIds.filter((id) => known.has(id));
    if (surfaceIds.length < also.surfaceIds.length || surfaceIds.length === 0) {
      idle.push({ kind: 'field', name: `picture.alsoServe[${i}].surfaceIds` });
    }
    return surfaceIds.length > 0 ? [{ ...also, surfaceIds }] : [];
  });
  if (idle.length === 0) return [];
  return [
    {
      id: 'picture.served-names',
      chapter: 'picture',
      severity: 'watch',
      measured: idle.length,
      limit: 0,
      unit: 'count',
      where: idle.slice(0, 50),
      sentence: 'Rates to be served as well that name no surface, or one that is not there: {measured}.',
      fix: setFieldsFix('Drop what names no surface', 'rates to serve', [
        { path: ['picture', 'alsoServe'], value: kept },
      ]),
    },
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
