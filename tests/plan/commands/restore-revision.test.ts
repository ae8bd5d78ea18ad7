import { expect, test } from 'vitest';
import { issueRevision } from '../../../src/plan/commands/issue-revision';
import { restoreRevision } from '../../../src/plan/commands/restore-revision';
import { setFields } from '../../../src/plan/commands/set-fields';
import type { Plan } from '../../../src/plan/plan';
import { planContentOf } from '../../../src/plan/plan-content-of';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const names = { processors: [], ports: [], circuits: [] };
const issued = taken(
  issueRevision.apply(samplePlan('flat'), { name: 'B', issuedOn: '2026-11-25', note: 'For the build.', names }),
);
const [revision] = issued.revisions;
const renamed = (plan: Plan) => taken(setFields.apply(plan, { fields: [{ path: ['name'], value: 'Larger' }] }));

test('restore-revision puts its content in place of the plan, and leaves revisions, id and log', () => {
  const changed = renamed({ ...issued, log: { ticks: [] } });
  const after = taken(restoreRevision.apply(changed, { id: revision!.id }));
  expect(planContentOf(after)).toEqual(revision!.content);
  expect(after.id).toBe(changed.id);
  expect(after.revisions).toBe(changed.revisions);
  expect(after.log).toBe(changed.log);
  expect(changedGroups(changed, after)).toEqual(['name']);
});

test('restore-revision of a plan that is as issued changes nothing', () => {
  expect(changedGroups(issued, taken(restoreRevision.apply(issued, { id: revision!.id })))).toEqual([]);
});

test('restore-revision refuses one that is not there', () => {
  expect(restoreRevision.apply(issued, { id: 'gone' })).toEqual({
    refused: `there is no revision 'gone'`,
    path: 'revisions',
  });
});

test('restore-revision says its name', () => {
  expect(restoreRevision.label(issued, { id: revision!.id })).toBe('restore revision B');
});
