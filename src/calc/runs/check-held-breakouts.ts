import type { Check } from '../chapter';
import type { LocatedChain } from '../names/locate-names';
import { statesOfPorts } from '../names/states-of-ports';
import { breakoutsForRuns } from '../ports/outlets';
import type { SurfaceSet } from '../surfaces/surface-table';
import { assembleRuns } from './assemble-runs';
import type { RunsResults } from './run-result';
import type { WiredZone } from './wire-zones';

/** Breakouts that are in use only because names are held which nobody else gets. */
export function checkHeldBreakouts(
  held: readonly LocatedChain[],
  zones: readonly WiredZone[],
  surfaces: SurfaceSet,
  results: Pick<RunsResults, 'zones' | 'runs' | 'runOf'>,
): Check[] {
  const needed = zones.map(({ wiring, ports }) => breakoutsForRuns(wiring.ports, ports));
  /** Zones with more than they need; guests from other processors have no number of their own. */
  const above = (inUse: readonly number[]) =>
    [...zones.keys()].filter((i) => inUse[i]! > needed[i]! && zones[i]!.ports.returns !== 'processor');
  const more = above(results.zones.map(({ breakouts }) => breakouts));
  if (more.length === 0) return [];
  const sum = (figureOf: (zone: number) => number) => more.reduce((total, zone) => total + figureOf(zone), 0);
  const idle = new Set(idleChains(held, results));
  const freed = assembleRuns(
    zones,
    surfaces,
    held.filter((chain) => !idle.has(chain)),
  );
  const ports = [...idle].flatMap(({ name, returnName }) => (returnName === null ? [name] : [name, returnName]));
  return [
    {
      id: 'runs.held-breakouts',
      chapter: 'runs',
      severity: 'offer',
      measured: sum((i) => results.zones[i]!.breakouts),
      limit: sum((i) => needed[i]!),
      unit: 'count',
      where: more.slice(0, 50).map((i) => ({ kind: 'processor', name: `processor ${zones[i]!.zone.processor}` })),
      sentence:
        'Names of ports that were issued keep {measured} breakouts in use where {limit} would do: nobody else gets such a name.',
      ...(above(freed.breakoutsInUse).length > 0
        ? {}
        : {
            fix: {
              label: 'Let go of names not in use',
              command: { name: 'release-names', args: { ports } },
            },
          }),
    },
  ];
}

/** Held chains whose port is not in force where it was given. */
function idleChains(
  held: readonly LocatedChain[],
  results: Pick<RunsResults, 'runs' | 'runOf'>,
): readonly LocatedChain[] {
  const kept = new Set(statesOfPorts(held, results).kept);
  return held.filter(({ name }) => !kept.has(name));
}
