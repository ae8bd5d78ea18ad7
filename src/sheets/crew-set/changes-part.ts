import type { Change } from '../../calc/compare/change';
import { counted } from '../../units/counted';
import { formatQuantity } from '../../units/format-quantity';
import type { Unit } from '../../units/unit';
import { scheduleChanges } from '../schedule-changes';
import { blocksPart } from './blocks-part';
import type { Block, CrewPart } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';

/** Changes of panels that are listed; where there are more, the drawings mark them all. */
const mostPanels = 200;

/** What changed since the plan was last given to the crew; null where it never was. */
export function changesPart({ since, display }: Pick<CrewSetOptions, 'since' | 'display'>): CrewPart | null {
  if (since === null) return null;
  const { changes, hidden } = listed(since.changes);
  const formats = {
    before: closely({ ...display, currency: since.currency }),
    after: closely(display),
  };
  const title = `What changed since revision ${since.name}`;
  const blocks: readonly Block[] = [
    { kind: 'text', style: 'lead', text: `Revision ${since.name} was issued on ${since.issuedOn}.` },
    ...(changes.length === 0
      ? [{ kind: 'text', style: 'body', text: 'Nothing that a crew reads has changed since.' } as const]
      : [{ kind: 'table', title: '', schedule: scheduleChanges(changes, formats) } as const]),
    ...(hidden === 0
      ? []
      : [
          {
            kind: 'text',
            style: 'body',
            text: `And ${counted(hidden, 'panel')} more: the drawings mark every panel that is built or wired otherwise.`,
          } as const,
        ]),
  ];
  return blocksPart('changes', title, null, blocks);
}

/** All changes but those of panels beyond the first so many. */
function listed(changes: readonly Change[]): { readonly changes: readonly Change[]; readonly hidden: number } {
  let panels = 0;
  const shown = changes.filter(({ what }) => what !== 'panel' || ++panels <= mostPanels);
  return { changes: shown, hidden: changes.length - shown.length };
}

function closely(display: CrewSetOptions['display']) {
  return (value: number, unit: Unit, extra: number) => formatQuantity(value, unit, display, extra);
}
