import type { Mode } from '../../plan/picture';
import type { Plan } from '../../plan/plan';
import type { BitDepth, FrameRate } from '../../plan/primitives';
import type { Check } from '../chapter';
import type { Evaluation } from '../evaluation';
import { stopsOf } from '../levers/stops-of';

/** What the stage comes to at one rate and depth, by itself. */
export interface RateCell {
  readonly mode: Mode;
  /** Panels of the type that takes most of a port, on the surfaces asked about; null where no port can be computed. */
  readonly panelsAPort: number | null;
  readonly ports: number;
  readonly processors: number;
  /** The first stop of the signal chapters; null: it fits. */
  readonly stop: Check | null;
  /** Where panels cannot refresh a whole multiple of the rate, the check that says so. */
  readonly refresh: Check | null;
  /** True for what runs now. */
  readonly current: boolean;
}

const tableRates: readonly FrameRate[] = [
  ...[24, 25, 30, 48, 50, 60, 100, 120].map((frames) => ({ frames, seconds: 1 })),
  { frames: 30_000, seconds: 1001 },
];
export const tableDepths: readonly BitDepth[] = [8, 10, 12];

function sameRate(a: FrameRate, b: FrameRate): boolean {
  return a.frames * b.seconds === b.frames * a.seconds;
}

/** Rates of the table's rows: the usual nine, and the plan's own, slowest first. */
export function rowsOfRates(plan: Plan): readonly FrameRate[] {
  const rates = [...tableRates];
  const own = [
    plan.picture.base,
    ...plan.picture.bySurface.map((entry) => entry.mode),
    ...plan.picture.alsoServe.map((entry) => entry.mode),
  ];
  for (const { rate } of own) if (!rates.some((known) => sameRate(known, rate))) rates.push(rate);
  return rates.sort((a, b) => a.frames / a.seconds - b.frames / b.seconds);
}

/** The plan with a mode on some surfaces (null: on all) and nothing else to serve. */
function planAt(plan: Plan, surfaceIds: readonly string[] | null, mode: Mode): Plan {
  const picture =
    surfaceIds === null
      ? { base: mode, bySurface: [], alsoServe: [] }
      : {
          base: plan.picture.base,
          bySurface: [
            ...plan.picture.bySurface.filter((entry) => !surfaceIds.includes(entry.surfaceId)),
            ...surfaceIds.map((surfaceId) => ({ surfaceId, mode })),
          ],
          alsoServe: [],
        };
  return { ...plan, picture };
}

function isRefreshOf({ surfaces }: Evaluation, asked: (surfaceId: string) => boolean): (check: Check) => boolean {
  const ids = new Set(
    surfaces.surfaces.filter(({ surfaceId }) => asked(surfaceId)).map(({ letter }) => `picture.refresh.${letter}`),
  );
  return ({ id, severity }) => severity === 'watch' && ids.has(id);
}

function cellOf(
  evaluation: Evaluation,
  plan: Plan,
  surfaceIds: readonly string[] | null,
  mode: Mode,
  current: Mode,
): RateCell {
  const asked = (surfaceId: string) => surfaceIds === null || surfaceIds.includes(surfaceId);
  const panels = evaluation.ports.results.surfaces
    .filter((s) => asked(s.surfaceId))
    .flatMap((s) => s.byType.map((type) => type.panelsAPort));
  return {
    mode,
    panelsAPort: panels.length === 0 ? null : Math.min(...panels),
    ports: evaluation.runs.results.surfaces.filter((s) => asked(s.surfaceId)).reduce((sum, s) => sum + s.ports, 0),
    processors: evaluation.zones.results.surfaces
      .filter((s) => asked(s.surfaceId))
      .reduce((sum, s) => sum + s.zones, 0),
    stop: stopsOf('signal', evaluation, plan)[0] ?? null,
    refresh: evaluation.picture.checks.find(isRefreshOf(evaluation, asked)) ?? null,
    current: sameRate(mode.rate, current.rate) && mode.depthBits === current.depthBits,
  };
}

/**
 * Frame rate x depth, cell by cell, row by row: every cell is that rate alone on the surfaces asked about (null: all),
 * with the pictures a frame that run now. Yields between evaluations, so that a long table may be stopped.
 */
export function* rateTable(
  plan: Plan,
  surfaceIds: readonly string[] | null,
  evaluate: (plan: Plan) => Evaluation,
): Generator<RateCell, void> {
  const own =
    surfaceIds === null ? undefined : plan.picture.bySurface.find((entry) => entry.surfaceId === surfaceIds[0])?.mode;
  const current = own ?? plan.picture.base;
  for (const rate of rowsOfRates(plan)) {
    for (const depthBits of tableDepths) {
      const mode: Mode = { rate, depthBits, pictures: current.pictures };
      const changed = planAt(plan, surfaceIds, mode);
      yield cellOf(evaluate(changed), changed, surfaceIds, mode, current);
    }
  }
}
