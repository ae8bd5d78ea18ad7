import { produce } from 'immer';
import type { WayOfWiring } from '../hand-change';
import type { Anchor } from '../primitives';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { isSameAnchor } from './is-same-anchor';
import { removeWhere } from './remove-where';

export interface PutWayArguments {
  readonly id: string;
  /** A panel of the zone that is wired in this way. */
  readonly at: Anchor;
  readonly way: WayOfWiring;
  /** Earlier choices for the same zone, by their ids: they go. */
  readonly replaces?: readonly string[];
}

/** Chooses by hand how a zone is wired. An earlier choice anchored to the same panel goes. */
export const putWay: CommandDefinition<'put-way', PutWayArguments> = {
  name: 'put-way',
  label: (_plan, { way }) => `wire ${wordsFor(way)}`,
  apply(plan, { id, at, way, replaces = [] }) {
    return admit(
      plan,
      produce(plan, (draft) => {
        removeWhere(
          draft.handChanges,
          (change) => replaces.includes(change.id) || (change.kind === 'way' && isSameAnchor(change.at, at)),
        );
        draft.handChanges.push({ kind: 'way', id, at, way });
      }),
    );
  },
};

function wordsFor(way: WayOfWiring): string {
  switch (way.kind) {
    case 'columns':
      return 'by columns';
    case 'folded':
      return `folded ${way.wide} wide`;
    case 'split':
      return `split above row ${way.aboveRow}, ${way.wide} wide below`;
    case 'rows':
      return 'by rows';
    case 'free':
      return 'freely';
  }
}
