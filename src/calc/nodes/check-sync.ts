import type { FrameRate } from '../../plan/primitives';
import type { Sync } from '../../plan/sync';
import type { Check } from '../chapter';
import type { SurfacePicture } from '../picture/picture-result';
import { setFieldsFix } from '../set-fields-fix';
import { isMultiple, referenceRates } from './reference-rates';

type Paced = Pick<SurfacePicture, 'letter' | 'mode'>;

const kinds: readonly Sync['reference'][] = ['tri-level', 'ptp'];
const names: Readonly<Record<Sync['reference'], string>> = {
  'black-burst': 'Black burst',
  'tri-level': 'Tri-level sync',
  ptp: 'The precision time protocol',
};
const fps = ({ frames, seconds }: FrameRate) => frames / seconds;

/** Whether all surfaces keep step on one sync, and whether its reference beats at their rate. */
export function checkSync(reference: Sync['reference'], surfaces: readonly Paced[]): Check[] {
  if (surfaces.length === 0) return [];
  const slowest = surfaces.reduce((a, b) => (fps(b.mode.rate) < fps(a.mode.rate) ? b : a)).mode.rate;
  return [checkStep(surfaces, slowest), checkReference(reference, slowest)];
}

function checkStep(surfaces: readonly Paced[], slowest: FrameRate): Check {
  const odd = surfaces.filter(({ mode }) => !isMultiple(mode.rate, slowest));
  const common = { id: 'nodes.sync-rates', chapter: 'nodes', limit: fps(slowest), unit: 'fps' } as const;
  const [first] = odd;
  if (first === undefined) {
    return {
      ...common,
      severity: 'pass',
      measured: Math.max(...surfaces.map(({ mode }) => fps(mode.rate))),
      where: [],
      sentence: 'All surfaces keep step on one sync: every rate is a whole multiple of {limit}.',
    };
  }
  return {
    ...common,
    severity: 'watch',
    measured: fps(first.mode.rate),
    where: odd.slice(0, 50).map(({ letter }) => ({ kind: 'surface', name: letter })),
    sentence: `Surfaces do not keep step on one sync: {measured} on ${first.letter} is no whole multiple of {limit}, the slowest rate.`,
  };
}

function checkReference(reference: Sync['reference'], slowest: FrameRate): Check {
  const beats = (kind: Sync['reference']) => referenceRates[kind]?.some((rate) => isMultiple(slowest, rate)) ?? true;
  const common = {
    id: 'nodes.sync-reference',
    chapter: 'nodes',
    measured: fps(slowest),
    limit: null,
    unit: 'fps',
    where: [{ kind: 'field', name: 'sync.reference' }],
  } as const;
  if (beats(reference)) {
    return { ...common, severity: 'pass', sentence: `${names[reference]} beats in step with {measured}.` };
  }
  const other = kinds.find(beats)!;
  return {
    ...common,
    severity: 'watch',
    sentence: `${names[reference]} beats at no rate of which {measured} is a whole multiple.`,
    fix: setFieldsFix(`Take ${lowerFirst(names[other])}`, 'reference', [{ path: ['sync', 'reference'], value: other }]),
  };
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
