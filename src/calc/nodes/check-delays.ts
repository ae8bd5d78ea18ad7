import type { Delay } from '../../plan/delay';
import type { Check } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { checkSurfaceNames } from '../surfaces/check-surface-names';
import type { SurfaceSet } from '../surfaces/surface-table';
import { surfaceWords } from '../surfaces/surface-words';
import type { SurfaceDelay } from './node-result';

/** Delays nearer to each other than this look the same: a hundredth of a millisecond. */
const sameMs = 0.01;
/** Steps, and milliseconds of one, that the plan takes. */
const stepsMost = 50;
const heldMostMs = 100_000;

/** Whether every surface has its steps of delay, shows no later than the shoot bears, and shows with the others. */
export function checkDelays(delay: Delay, surfaces: SurfaceSet, delays: readonly SurfaceDelay[]): Check[] {
  const stated = delays.flatMap(({ surfaceId, ms }) => (ms === null ? [] : [{ surfaceId, ms }]));
  return [
    ...checkSurfaceNames(surfaces, {
      id: 'nodes.delay-names',
      chapter: 'nodes',
      path: ['delay', 'steps'],
      field: 'surfaceIds',
      entries: delay.steps,
      keep: (step, isThere) => {
        if (step.surfaceIds === null) return step;
        const surfaceIds = step.surfaceIds.filter(isThere);
        if (surfaceIds.length === 0) return null;
        return surfaceIds.length < step.surfaceIds.length ? { ...step, surfaceIds } : step;
      },
      sentence: 'Steps of the delay that name no surface, or one that is not there: {measured}.',
      called: 'steps of the delay',
    }),
    ...delays.map((one) => checkLateness(delay, surfaces, one)),
    ...checkTogether(delay, surfaces, stated),
  ];
}

function checkLateness(delay: Delay, { surfaces }: SurfaceSet, { surfaceId, ms, frames }: SurfaceDelay): Check {
  const table = surfaces.find((surface) => surface.surfaceId === surfaceId)!;
  const { mostMs } = delay;
  const words = surfaceWords(table);
  const common = {
    id: `nodes.delay.${table.letter}`,
    chapter: 'nodes' as const,
    measured: ms === null ? null : ms / 1000,
    limit: mostMs === null ? null : mostMs / 1000,
    unit: 's' as const,
    where: [
      { kind: 'surface' as const, name: table.letter },
      { kind: 'field' as const, name: 'delay.mostMs' },
    ],
  };
  if (ms === null || frames === null) {
    return { ...common, severity: 'offer', sentence: `Not stated: the steps of the delay of ${words}.` };
  }
  const values = { frames: { value: frames, unit: 'count' as const } };
  if (mostMs === null) {
    return {
      ...common,
      severity: 'offer',
      sentence: `A move of the camera shows on ${words} {measured} later, {frames} of its frames; what the shoot bears is not stated.`,
      values,
    };
  }
  return {
    ...common,
    severity: ms > mostMs ? 'watch' : 'pass',
    sentence: `A move of the camera shows on ${words} {measured} later, {frames} of its frames; the shoot bears {limit}.`,
    values,
  };
}

/** Surfaces that show the same move at unlike times; the quicker ones can be held back. */
function checkTogether(
  delay: Delay,
  { surfaces }: SurfaceSet,
  stated: readonly { readonly surfaceId: string; readonly ms: number }[],
): Check[] {
  if (stated.length < 2) return [];
  const lastMs = Math.max(...stated.map(({ ms }) => ms));
  const early = stated.filter(({ ms }) => lastMs - ms > sameMs);
  const letterOf = (surfaceId: string) => surfaces.find((table) => table.surfaceId === surfaceId)!.letter;
  const common = {
    id: 'nodes.delays-together',
    chapter: 'nodes' as const,
    measured: (lastMs - Math.min(...stated.map(({ ms }) => ms))) / 1000,
    limit: 0,
    unit: 's' as const,
  };
  if (early.length === 0) {
    return [
      {
        ...common,
        severity: 'pass',
        measured: 0,
        where: [],
        sentence: 'Every surface shows a move of the camera at the same time.',
      },
    ];
  }
  const taken = new Set(delay.steps.map(({ id }) => id));
  const held = early.map(({ surfaceId, ms }) => ({
    id: freeId(taken),
    name: `Held back, ${letterOf(surfaceId)}`,
    frames: 0,
    ms: Math.round((lastMs - ms) * 1000) / 1000,
    surfaceIds: [surfaceId],
  }));
  const steps = [...delay.steps, ...held];
  return [
    {
      ...common,
      severity: 'watch',
      where: early.slice(0, 50).map(({ surfaceId }) => ({ kind: 'surface', name: letterOf(surfaceId) })),
      sentence: 'Surfaces show the same move of the camera at unlike times, up to {measured} apart.',
      ...(steps.length > stepsMost || held.some(({ ms }) => ms > heldMostMs)
        ? {}
        : {
            fix: setFieldsFix('Hold the quicker ones back', 'delay', [{ path: ['delay', 'steps'], value: steps }]),
          }),
    },
  ];
}

function freeId(taken: Set<string>): string {
  let n = 1;
  while (taken.has(`hold-${n}`)) n++;
  taken.add(`hold-${n}`);
  return `hold-${n}`;
}
