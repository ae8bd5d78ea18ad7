import { freshId } from '../fresh-id';
import type { HeldNames } from '../held-names';
import { planContentOf } from '../plan-content-of';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface IssueRevisionArguments {
  /** As it stands on the sheets: 'B'. No revision issued before has it. */
  readonly name: string;
  /** Day on the user's calendar: '2026-11-25'. */
  readonly issuedOn: string;
  readonly note: string;
  /** Names of processors, ports and circuits as the sheets give them. */
  readonly names: HeldNames;
}

/** Keeps the plan as it is given to the crew, and holds the names on their sheets from now on. */
export const issueRevision: CommandDefinition<'issue-revision', IssueRevisionArguments> = {
  name: 'issue-revision',
  label: (_plan, { name }) => `issue revision ${name.trim()}`,
  apply(plan, { name: typed, issuedOn, note, names }) {
    const name = typed.trim();
    const isSame = (other: string) => other.trim().toLowerCase() === name.toLowerCase();
    if (plan.revisions.some((revision) => isSame(revision.name))) {
      return { refused: `revision ${name} was issued already`, path: 'revisions' };
    }
    const issued = { ...plan, revision: name, names };
    const revision = { id: freshId(plan, 'revision'), name, issuedOn, note, content: planContentOf(issued) };
    return admit(plan, { ...issued, revisions: [...plan.revisions, revision] });
  },
};
