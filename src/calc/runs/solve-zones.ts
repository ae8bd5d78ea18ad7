import { chooseReturning } from './search/choose-returning';
import { wiringKey } from './search/wiring-key';
import { createZoneSolver, type SolveZone } from './zone-solver';

/** A solver of zones that remembers: the wiring of most merit, beside the other ways and the least possible. */
export function solveZones(): SolveZone {
  return createZoneSolver(chooseReturning, wiringKey);
}
