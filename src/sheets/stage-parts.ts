import type { CeilingResult } from '../calc/ceilings/ceiling-result';
import type { Evaluation } from '../calc/evaluation';
import type { PowerResults } from '../calc/power/power-result';
import type { RunsResults } from '../calc/runs/run-result';
import type { SurfaceSet } from '../calc/surfaces/surface-table';
import type { WallResult } from '../calc/walls/wall-result';
import type { Zone } from '../calc/zones/zone-result';
import type { Plan } from '../plan/plan';

/** What the drawings read of a plan and its evaluation, and no more. */
export interface StageParts {
  readonly surfaces: SurfaceSet;
  readonly walls: readonly WallResult[];
  readonly ceilings: readonly CeilingResult[];
  readonly zones: readonly Zone[];
  readonly runs: RunsResults;
  readonly power: PowerResults;
  readonly hall: Plan['wish']['hall'];
  readonly vehicle: Plan['wish']['vehicle'];
  readonly reachMm: number;
  readonly ceilingEntry: Plan['signal']['ceilingEntry'];
  readonly lengths: Plan['lengths'];
  /** Ceilings as they are planned, for the heights of their travel. */
  readonly plannedCeilings: Plan['ceilings'];
}

export function stageParts(plan: Plan, evaluation: Evaluation): StageParts {
  return {
    surfaces: evaluation.surfaces,
    walls: evaluation.walls.results.walls,
    ceilings: evaluation.ceilings.results.ceilings,
    zones: evaluation.zones.results.zones,
    runs: evaluation.runs.results,
    power: evaluation.power.results,
    hall: plan.wish.hall,
    vehicle: plan.wish.vehicle,
    reachMm: plan.signal.reachMm,
    ceilingEntry: plan.signal.ceilingEntry,
    lengths: plan.lengths,
    plannedCeilings: plan.ceilings,
  };
}
