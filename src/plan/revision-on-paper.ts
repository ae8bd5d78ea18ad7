import { asIssued } from './as-issued';
import type { Plan } from './plan';

/**
 * The revision that paper printed of a plan bears: its own name ('B') as long as nothing else was issued under it, else 'after B',
 * so that no sheet of a plan that was changed since passes for one that was issued. '' where the plan has no name of a revision.
 */
export function revisionOnPaper(plan: Plan): string {
  const { revision, revisions } = plan;
  const name = revision.trim().toLowerCase();
  const issued = revisions.filter((one) => one.name.trim().toLowerCase() === name);
  if (issued.length === 0) return revision;
  const same = asIssued(plan);
  return issued.some(({ id }) => same.has(id)) ? revision : `after ${revision}`;
}
