import type { WayOfWiring } from '../../plan/hand-change';
import type { ExistingWiring, Signal } from '../../plan/signal';
import type { LocatedChain } from '../names/locate-names';
import { portsARun } from '../ports/outlets';
import { assembleRuns } from './assemble-runs';
import { compareWays } from './compare-ways';
import { traceExisting } from './existing/trace-existing';
import type { LaidChanges } from './hand-changes/lay-hand-changes';
import type { RunsResults, SurfaceRuns, ZoneRuns } from './run-result';
import { wayKey } from './way-key';
import type { StageInputs } from './wire-stage';
import type { WiredZone } from './wire-zones';

export interface RunsInputs extends StageInputs {
  readonly signal: Signal;
  readonly existingWiring: ExistingWiring | null;
  /** Ports whose names are held; null or left out: names follow from the wiring alone. */
  readonly held?: readonly LocatedChain[] | null;
}

/** Runs of the wired stage on their ports, beside the other ways, the least possible and the wiring that exists already. */
export function computeRuns(inputs: RunsInputs, { zones, resting }: LaidChanges): RunsResults {
  const { surfaces, existingWiring } = inputs;
  const { breakoutsInUse, ...assembled } = assembleRuns(zones, surfaces, inputs.held);
  const bySurface = surfaces.surfaces.map(({ surfaceId }, i) =>
    surfaceRuns(
      surfaceId,
      zones.filter(({ surface }) => surface === i),
    ),
  );
  const waysOf = new Map(zones.map(({ answer }) => [answer, knownWays(answer)]));
  const byZone = zones.map((zone, i) => zoneRuns(zone, waysOf.get(zone.answer)!, breakoutsInUse[i]!));
  const { runs } = assembled;
  const counts = runs.map(({ count }) => count);
  return {
    ...assembled,
    surfaces: bySurface,
    zones: byZone,
    portsUsed: byZone.reduce((sum, { ports }) => sum + ports, 0),
    portsLeast: bySurface.reduce((sum, { portsLeast }) => sum + portsLeast, 0),
    panelsPerPortMin: counts.length > 0 ? counts.reduce((a, b) => Math.min(a, b)) : null,
    panelsPerPortMax: counts.length > 0 ? counts.reduce((a, b) => Math.max(a, b)) : null,
    fullestPortShare: runs.length > 0 ? runs.reduce((most, { share }) => Math.max(most, share), 0) : null,
    breakouts: byZone.reduce((sum, { breakouts }) => sum + breakouts, 0),
    resting,
    existing: existingWiring === null ? null : traceExisting({ ...inputs, existingWiring }),
  };
}

function surfaceRuns(surfaceId: string, zones: readonly WiredZone[]): SurfaceRuns {
  const each = zones.length > 0 ? portsARun(zones[0]!.ports) : 1;
  return {
    surfaceId,
    ports: each * zones.reduce((sum, { wiring }) => sum + wiring.ports, 0),
    portsLeast: each * zones.reduce((sum, { answer }) => sum + answer.least, 0),
    ways: compareWays(surfaceId, zones),
  };
}

function knownWays({ ways }: WiredZone['answer']): readonly WayOfWiring[] {
  return [...new Map(ways.map(({ way }) => [wayKey(way), way])).values()];
}

function zoneRuns(
  { zone, ports, answer, wiring, byHand }: WiredZone,
  ways: readonly WayOfWiring[],
  breakouts: number,
): ZoneRuns {
  return {
    surfaceId: zone.surfaceId,
    processor: zone.processor,
    way: wiring.way,
    byHand,
    ways,
    runs: wiring.ports,
    ports: wiring.ports * portsARun(ports),
    portsLeast: answer.least * portsARun(ports),
    breakouts,
    entriesOutOfReach: wiring.entriesOutOfReach,
  };
}
