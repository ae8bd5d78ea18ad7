import type { Check } from '../calc/chapter';
import type { Terminal } from './terminal';

/** Says on standard error how many checks stop a plan whose answer is given all the same. */
export function complainOfStops(checks: readonly Check[], terminal: Terminal): void {
  const stops = checks.filter((each) => each.severity === 'stop').length;
  if (stops > 0) terminal.complain(`voussoir: checks that stop this plan: ${stops}; see check\n`);
}
