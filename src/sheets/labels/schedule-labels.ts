import { itemLink } from '../item-link';
import type { Schedule } from '../schedule';
import { figures, words } from '../schedule-column';
import { kindWords, type LabelledCable } from './labelled-cable';

/**
 * Labels for a program that prints them: a row for each end of each cable, both ends of one after the other. `address`: of
 * the page that links lead to; null: no links.
 */
export function scheduleLabels(
  cables: readonly LabelledCable[],
  { address, planId }: { readonly address: string | null; readonly planId: string },
): Schedule {
  return {
    id: 'labels',
    title: 'Labels',
    columns: [
      words('kind', 'Kind'),
      words('name', 'Name'),
      words('end', 'End'),
      words('from', 'From'),
      words('to', 'To'),
      words('lengthClass', 'Length class'),
      figures('cables', 'Cables', 'count'),
      words('link', 'Link'),
    ],
    count: 2 * cables.length,
    row: (index) => {
      const { kind, name, from, to, lengthClass, count, item } = cables[index >> 1]!;
      const end = index % 2 === 0 ? 'from' : 'to';
      const link = address === null ? null : itemLink(address, planId, item);
      return [kindWords[kind].title, name, end, from.words, to.words, lengthClass, count, link];
    },
    panelOf: (index) => cables[index >> 1]!.panel,
    totals: null,
  };
}
