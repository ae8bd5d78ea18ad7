import type { BuildStep } from '../../plan/build-log';
import { isDone, type LogState } from './log-state';

/**
 * By panel, 1 where a step is done for it: where its column, the port that feeds it or its circuit is ticked.
 * `total`: panels of the stage.
 */
export function coveredPanels(state: LogState, step: BuildStep, total: number): Uint8Array {
  const covered = new Uint8Array(total);
  for (const things of [state.column, state.port, state.circuit]) {
    for (const thing of things) {
      if (!thing.feeds || !isDone(thing, step)) continue;
      for (const panel of thing.panels) covered[panel] = 1;
    }
  }
  return covered;
}
