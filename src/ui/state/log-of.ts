import { computeProgress } from '../../calc/log/compute-progress';
import { coveredPanels } from '../../calc/log/covered-panels';
import { listThings } from '../../calc/log/list-things';
import { type LogState, stateOfLog } from '../../calc/log/log-state';
import { memo } from '../../calc/memo';
import type { BuildLog } from '../../plan/build-log';
import type { Wired } from './fault-model-of';

const things = memo(listThings);
const stateNow = memo(stateOfLog);

/** What the log says of every column, port and circuit of an evaluation; the same object while neither changes. */
export function logOf({ surfaces, zones, runs, power }: Wired, log: BuildLog): LogState {
  const parts = { surfaces, zones: zones.results.zones, runs: runs.results, power: power.results };
  return stateNow(surfaces, things(parts), log);
}

/** How far each area is, and which panels a step is done for; remembered like the state that they follow from. */
export const progressOf = memo(computeProgress);
export const coveredBy = memo(coveredPanels);
