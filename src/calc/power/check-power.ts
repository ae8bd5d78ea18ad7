import type { Check } from '../chapter';
import { checkCircuits } from './check-circuits';
import { checkDistros } from './check-distros';
import { checkHeldCircuits } from './check-held-circuits';
import { checkInrush } from './check-inrush';
import { checkLeakage } from './check-leakage';
import { checkNeutral } from './check-neutral';
import { checkSupply } from './check-supply';
import { checkVoltage } from './check-voltage';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';

/** Every check of the Power chapter. What is owned of distros is checked against the wish. */
export function checkPower(inputs: PowerInputs, results: PowerResults): Check[] {
  return [
    ...checkCircuits(inputs, results),
    ...checkDistros(inputs, results),
    ...checkSupply(inputs, results),
    ...checkVoltage(inputs),
    ...checkNeutral(inputs, results),
    ...checkLeakage(inputs, results),
    ...checkInrush(inputs, results),
    ...checkHeldCircuits(inputs.held ?? [], results),
  ];
}
