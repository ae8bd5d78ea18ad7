import { planOfContent } from '../plan-of-content';
import { admit } from './admit';
import type { CommandDefinition } from './command';

export interface RestoreRevisionArguments {
  readonly id: string;
}

/** Puts what was planned when a revision was issued in place of what is planned now. Revisions and build log stay. */
export const restoreRevision: CommandDefinition<'restore-revision', RestoreRevisionArguments> = {
  name: 'restore-revision',
  label: (plan, { id }) => `restore revision ${plan.revisions.find((revision) => revision.id === id)?.name ?? id}`,
  apply(plan, { id }) {
    const revision = plan.revisions.find((issued) => issued.id === id);
    if (revision === undefined) return { refused: `there is no revision '${id}'`, path: 'revisions' };
    return admit(plan, planOfContent(plan, revision.content));
  },
};
