import type { Plan } from '../plan/plan';
import { type TickList, tickListFormat, tickListVersion } from '../plan/tick-list';

/** Everything that a device has ticked for a plan, or knows to be ticked. */
export function tickListOf({ id, name, log }: Pick<Plan, 'id' | 'name' | 'log'>): TickList {
  return { format: tickListFormat, version: tickListVersion, planId: id, planName: name, ticks: log.ticks };
}

/** The text of a file of ticks: a line for each, so that two files can be compared by eye. The same ticks give the same text. */
export function tickFileText({ ticks, ...head }: TickList): string {
  const lines = ticks.map((tick) => `    ${JSON.stringify(tick)}`).join(',\n');
  const open = JSON.stringify(head, null, 2).slice(0, -2);
  return `${open},\n  "ticks": [${lines === '' ? '' : `\n${lines}\n  `}]\n}\n`;
}
