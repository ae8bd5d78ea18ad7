import type { Step } from '../chapter';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';
import { workCircuits } from './work-circuits';
import { workLegs } from './work-legs';
import { workLimits } from './work-limits';
import { workLoads } from './work-loads';

/** How the headline figures of the Power chapter come about: panels a circuit, watts, the worst leg, the neutral, and their limits. */
export function workPower(inputs: PowerInputs, results: PowerResults): Step[] {
  return [
    ...workCircuits(inputs),
    ...workLoads(inputs, results),
    ...workLegs(inputs, results),
    ...workLimits(inputs, results),
  ];
}
