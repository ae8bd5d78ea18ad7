import { cautions } from '../../calc/cautions';
import type { Evaluation } from '../../calc/evaluation';
import { listThings } from '../../calc/log/list-things';
import { scheduleThings } from '../schedule-things';
import { blocksPart } from './blocks-part';
import type { CrewPart } from './crew-part';

/** In the order of the work, as the build log has them. */
const boxes = ['Stands', 'Wired', 'Powered', 'Tested'] as const;

/** Boxes to sign for every column, port and circuit; null where there is none. */
export function checkSheetPart({ surfaces, zones, runs, power }: Evaluation): CrewPart | null {
  const things = listThings({ surfaces, zones: zones.results.zones, runs: runs.results, power: power.results });
  const tables = (['column', 'port', 'circuit'] as const)
    .map((of) => scheduleThings(surfaces, of, things[of]))
    .filter(({ count }) => count > 0);
  if (tables.length === 0) return null;
  return blocksPart('check-sheet', 'Check sheet', things.circuit.length > 0 ? cautions.electricity : null, [
    { kind: 'text', style: 'body', text: 'Sign with initials when it is done; leave the box empty while it is not.' },
    ...tables.map((schedule) => ({ kind: 'table' as const, title: schedule.title, schedule, boxes })),
  ]);
}
