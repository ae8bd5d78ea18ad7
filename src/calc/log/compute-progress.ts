import { type BuildStep, buildStep, type TickedKind } from '../../plan/build-log';
import type { SurfaceSet } from '../surfaces/surface-table';
import { zonePanels } from '../zones/zone-of-panels';
import type { Zone } from '../zones/zone-result';
import { coveredPanels } from './covered-panels';
import { isDone, type LogState, type ThingState } from './log-state';

/** By what each step is counted: columns stand, ports are wired and tested, circuits are powered. */
export const countedBy: Readonly<Record<BuildStep, TickedKind>> = {
  stands: 'column',
  wired: 'port',
  powered: 'circuit',
  tested: 'port',
};

export interface StepProgress {
  readonly step: BuildStep;
  readonly of: TickedKind;
  readonly done: number;
  readonly total: number;
  /** Panels for which the step is done: by their column, port or circuit. */
  readonly panels: number;
  /** panels / panels of the area; null without any. */
  readonly share: number | null;
}

/** How far an area is: the stage, one surface of it, or one zone of a surface. */
export interface AreaProgress {
  readonly kind: 'stage' | 'surface' | 'zone';
  /** 'the stage', 'A Horseshoe', 'processor 3'. */
  readonly name: string;
  readonly surfaceId: string | null;
  /** Index into the zones' list; null for what is no zone. */
  readonly zone: number | null;
  readonly panels: number;
  /** In the order of the work. */
  readonly steps: readonly StepProgress[];
}

/** The stage, then each surface followed by its zones. What lies in two zones counts in both, and once in the surface. */
export function computeProgress(
  surfaces: SurfaceSet,
  zones: readonly Zone[],
  state: LogState,
): readonly AreaProgress[] {
  const covered = buildStep.options.map((step) => coveredPanels(state, step, surfaces.total));
  const progress = (
    area: Pick<AreaProgress, 'kind' | 'name' | 'surfaceId' | 'zone'>,
    panels: readonly number[],
    isIn: (thing: ThingState) => boolean,
  ): AreaProgress => ({
    ...area,
    panels: panels.length,
    steps: buildStep.options.map((step, place): StepProgress => {
      const of = countedBy[step];
      const things = state[of].filter(isIn);
      const count = panels.reduce((sum, panel) => sum + covered[place]![panel]!, 0);
      return {
        step,
        of,
        done: things.filter((thing) => isDone(thing, step)).length,
        total: things.length,
        panels: count,
        share: panels.length === 0 ? null : count / panels.length,
      };
    }),
  });
  const all = Array.from({ length: surfaces.total }, (_, panel) => panel);
  const stage = progress({ kind: 'stage', name: 'the stage', surfaceId: null, zone: null }, all, () => true);
  const bySurface = surfaces.surfaces.flatMap((table, s) => {
    const { surfaceId, letter, name, count } = table;
    const offset = surfaces.offsets[s]!;
    const whole = progress(
      { kind: 'surface', name: `${letter} ${name}`.trim(), surfaceId, zone: null },
      all.slice(offset, offset + count),
      (thing) => thing.surfaceId === surfaceId,
    );
    const parts = zones.flatMap((zone, index) =>
      zone.surfaceId === surfaceId
        ? [
            progress(
              { kind: 'zone', name: `processor ${zone.processor}`, surfaceId, zone: index },
              zonePanels(table, zone).map((local) => offset + local),
              (thing) => thing.zones.includes(index),
            ),
          ]
        : [],
    );
    return [whole, ...parts];
  });
  return [stage, ...bySurface];
}
