import type { Check } from '../chapter';
import type { Change } from './change';
import { listChanges } from './list-changes';
import { pairThings } from './pair-things';
import { sayCheck } from './say-check';
import type { ThingList } from './thing';

/**
 * Checks that say something now and did not before, or no longer do, and those that became worse or better. A check that
 * passes says nothing; other figures in a check that stays are no change of it.
 */
export function compareChecks(before: readonly Check[], after: readonly Check[]): Change[] {
  const old = before.filter(({ severity }) => severity !== 'pass');
  const now = after.filter(({ severity }) => severity !== 'pass');
  const pairing = pairThings(old.map(asTold), now.map(asTold));
  return listChanges('check', byId(old), byId(now), pairing).filter(({ kind }) => kind !== 'renamed');
}

/** Ids of checks can name ids of items: one that says the same of the same things under another id is the same check. */
function asTold({ id, severity, sentence, where }: Check) {
  const things = where.filter(({ kind }) => kind !== 'field').map(({ kind, name }) => `${kind} ${name}`);
  return { name: id, content: [sentence, ...things].join('\n'), detail: severity };
}

function byId(checks: readonly Check[]): ThingList {
  return {
    things: checks.map(({ id, severity }) => ({ name: id, content: '', detail: severity })),
    sayContent: () => [],
    sayDetail: (index) => sayCheck(checks[index]!),
  };
}
