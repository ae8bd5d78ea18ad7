import { schedulePorts } from '../schedule-ports';
import type { StageParts } from '../stage-parts';
import { blocksPart } from './blocks-part';
import type { CrewPart } from './crew-part';
import { homeRunNote } from './home-run-note';

/** Port schedule of the whole stage; null where nothing is wired. */
export function portsPart(parts: StageParts): CrewPart | null {
  const schedule = schedulePorts(parts);
  if (schedule.count === 0) return null;
  return blocksPart('ports', schedule.title, null, [
    { kind: 'text', style: 'body', text: homeRunNote },
    { kind: 'table', title: '', schedule },
  ]);
}
