import type { Check } from '../chapter';
import type { LocatedChain } from '../names/locate-names';
import { statesOfPorts } from '../names/states-of-ports';
import { breakoutsForRuns } from '../ports/outlets';
import type { RunsResults } from './run-result';
import type { WiredZone } from './wire-zones';

/** Breakouts that are in use only because names are held which nobody else gets. */
export function checkHeldBreakouts(
  held: readonly LocatedChain[],
  zones: readonly WiredZone[],
  results: Pick<RunsResults, 'zones' | 'runs' | 'runOf'>,
): Check[] {
  const needed = zones.map(({ wiring, ports }) => breakoutsForRuns(wiring.ports, ports));
  const more = results.zones.flatMap(({ breakouts }, i) =>
    breakouts > needed[i]! && zones[i]!.ports.returns !== 'processor' ? [i] : [],
  );
  const { renamed, resting } = statesOfPorts(held, results);
  if (more.length === 0) return [];
  const sum = (figures: readonly number[]) => figures.reduce((total, figure) => total + figure, 0);
  const ports = [...renamed.map(({ name }) => name), ...resting];
  return [
    {
      id: 'runs.held-breakouts',
      chapter: 'runs',
      severity: 'offer',
      measured: sum(more.map((i) => results.zones[i]!.breakouts)),
      limit: sum(more.map((i) => needed[i]!)),
      unit: 'count',
      where: more
        .slice(0, 50)
        .map((i) => ({ kind: 'processor' as const, name: `processor ${zones[i]!.zone.processor}` })),
      sentence:
        'Names of ports that were issued keep {measured} breakouts in use where {limit} would do: nobody else gets such a name.',
      ...(ports.length === 0
        ? {}
        : {
            fix: {
              label: 'Let the names go that are not in use where they were given',
              command: { name: 'release-names', args: { ports } },
              otherwise: null,
            },
          }),
    },
  ];
}
