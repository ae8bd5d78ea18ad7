import { scheduleCounts } from '../schedule-counts';
import type { StageParts } from '../stage-parts';
import { blocksPart } from './blocks-part';
import type { CrewPart } from './crew-part';

const note =
  'A jumper counts where it leads to: data jumpers are panels less home runs, power jumpers panels less circuits.';

/** Panels and jumpers by area, for whoever loads and deals them out; null where there are none. */
export function countsPart(parts: StageParts): CrewPart | null {
  const schedule = scheduleCounts(parts);
  if (parts.surfaces.total === 0) return null;
  return blocksPart('counts', schedule.title, null, [
    { kind: 'text', style: 'body', text: note },
    { kind: 'table', title: '', schedule },
  ]);
}
