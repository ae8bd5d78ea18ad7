import { produce } from 'immer';
import type { HandChange } from '../hand-change';
import type { Anchor } from '../primitives';
import { admit } from './admit';
import type { CommandDefinition } from './command';
import { isSameAnchor } from './is-same-anchor';

/** A change of one run by hand: where it begins, that it is cut, or that it goes on. */
export type StepChange = Exclude<HandChange, { kind: 'way' }>;

export interface PutStepArguments {
  readonly change: StepChange;
}

const words: Readonly<Record<StepChange['kind'], string>> = {
  entry: 'begin a run by hand',
  cut: 'cut a run by hand',
  join: 'join two runs by hand',
};

/**
 * Changes one run by hand. A cut and a join of the same two panels undo each other: where the one stands, the other takes it out
 * and nothing is added. A change that stands already is not written twice.
 */
export const putStep: CommandDefinition<'put-step', PutStepArguments> = {
  name: 'put-step',
  label: (_plan, { change }) => words[change.kind],
  apply(plan, { change }) {
    return admit(
      plan,
      produce(plan, (draft) => {
        const at = draft.handChanges.findIndex((other) => concernsSame(other, change));
        const known = draft.handChanges[at];
        if (known !== undefined) draft.handChanges.splice(at, 1);
        if (known === undefined || known.kind === change.kind) draft.handChanges.push(change);
      }),
    );
  },
};

/** Both about the beginning at one panel, or both about the step between the same two panels. */
function concernsSame(one: HandChange, other: StepChange): boolean {
  if (one.kind === 'way') return false;
  if (one.kind === 'entry' || other.kind === 'entry') {
    return one.kind === 'entry' && other.kind === 'entry' && isSameAnchor(one.at, other.at);
  }
  return isSamePair(one.from, one.to, other.from, other.to);
}

function isSamePair(a: Anchor, b: Anchor, c: Anchor, d: Anchor): boolean {
  return (isSameAnchor(a, c) && isSameAnchor(b, d)) || (isSameAnchor(a, d) && isSameAnchor(b, c));
}
