import type { Change } from '../../calc/compare/change';
import { counted } from '../../units/counted';
import { formatQuantity } from '../../units/format-quantity';
import type { Unit } from '../../units/unit';
import { scheduleChanges } from '../schedule-changes';
import { blocksPart } from './blocks-part';
import type { Block, CrewPart } from './crew-part';
import type { CrewSetOptions } from './crew-set-options';

/** Changes of panels that are listed; where there are more, the drawings mark them all. */
const mostPanels = 60;

/** What changed since the plan was last given to the crew; null where it never was. */
export function changesPart({ since, display }: Pick<CrewSetOptions, 'since' | 'display'>): CrewPart | null {
  if (since === null) return null;
  const { changes, hidden } = listed(since.changes.flatMap(forCrew));
  const formats = {
    before: closely({ ...display, currency: since.currency }),
    after: closely(display),
  };
  const title = `What changed since revision ${since.name}`;
  const blocks: readonly Block[] = [
    { kind: 'text', style: 'lead', text: `Revision ${since.name} was issued on ${since.issuedOn}.` },
    ...(changes.length === 0
      ? [{ kind: 'text', style: 'body', text: 'Nothing that a crew reads has changed since.' } as const]
      : [
          { kind: 'text', style: 'body', text: countKinds(since.changes) } as const,
          { kind: 'table', title: '', schedule: scheduleChanges(changes, formats) } as const,
        ]),
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

/** A change as a crew reads it: checks without the ids that software knows them by, and no offers, which are the planner's. */
function forCrew(change: Change): readonly Change[] {
  if (change.what !== 'check') return [change];
  const isOffer = (said: Change['before']) => said === null || said[0] === 'offer: ';
  return isOffer(change.before) && isOffer(change.after) ? [] : [{ ...change, name: '' }];
}

/** All changes, those of panels last and no more than the first so many of them. */
function listed(changes: readonly Change[]): { readonly changes: readonly Change[]; readonly hidden: number } {
  const panels = changes.filter(({ what }) => what === 'panel');
  const others = changes.filter(({ what }) => what !== 'panel');
  return {
    changes: [...others, ...panels.slice(0, mostPanels)],
    hidden: Math.max(0, panels.length - mostPanels),
  };
}

const counts: readonly (readonly [Change['what'], string])[] = [
  ['panel', 'panel'],
  ['port', 'port'],
  ['trunk', 'trunk'],
  ['processor', 'processor'],
  ['node', 'node'],
  ['circuit', 'circuit'],
];

/** What a crew builds and plugs, counted by what became of it: '14 panels added, 2 ports moved.' */
function countKinds(changes: readonly Change[]): string {
  const parts = counts.flatMap(([what, name]) =>
    (['added', 'removed', 'moved', 'renamed', 'changed'] as const).flatMap((kind) => {
      const count = changes.filter((change) => change.what === what && change.kind === kind).length;
      return count === 0 ? [] : [`${counted(count, name)} ${kind}`];
    }),
  );
  return parts.length === 0 ? 'No panel, port, cable or circuit changed.' : `${parts.join(', ')}.`;
}

function closely(display: CrewSetOptions['display']) {
  return (value: number, unit: Unit, extra: number) => formatQuantity(value, unit, display, extra);
}
