import { expect, test } from 'vitest';
import { issueRevision } from '../../../src/plan/commands/issue-revision';
import { planContentOf } from '../../../src/plan/plan-content-of';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('flat');
const at = { surfaceId: 'wall', segmentId: 'straight', column: 1, row: 1 };
const names = { processors: [{ number: 1, at }], ports: [{ name: '1A-01', first: at, last: at }], circuits: [] };
const issue = { name: 'B', issuedOn: '2026-11-25', note: 'For the build.', names };

test('issue-revision keeps the plan under its name, with the names that it holds from now on', () => {
  const after = taken(issueRevision.apply(plan, issue));
  expect(after.revision).toBe('B');
  expect(after.names).toEqual(names);
  expect(after.revisions).toHaveLength(1);
  expect(after.revisions[0]).toMatchObject({ name: 'B', issuedOn: '2026-11-25', note: 'For the build.' });
  expect(after.revisions[0]!.content).toEqual({ ...planContentOf(plan), revision: 'B', names });
  expect(changedGroups(plan, after)).toEqual(['revision', 'names', 'revisions']);
});

test('issue-revision shares what it keeps with the plan, so that a revision costs no copy', () => {
  const after = taken(issueRevision.apply(plan, issue));
  expect(after.revisions[0]!.content.catalogue).toBe(plan.catalogue);
});

test('issue-revision puts the newest last, under an id of its own', () => {
  const first = taken(issueRevision.apply(plan, { ...issue, name: 'A' }));
  const second = taken(issueRevision.apply(first, issue));
  expect(second.revisions.map(({ id, name }) => [id, name])).toEqual([
    ['revision-1', 'A'],
    ['revision-2', 'B'],
  ]);
  expect(second.revisions[0]).toBe(first.revisions[0]);
});

test.each(['B', 'b', ' B '])('issue-revision refuses the name %j once B was issued', (name) => {
  const after = taken(issueRevision.apply(plan, issue));
  expect(issueRevision.apply(after, { ...issue, name })).toEqual({
    refused: `revision ${name.trim()} was issued already`,
    path: 'revisions',
  });
});

test('issue-revision refuses no name and no day, at their place', () => {
  expect(issueRevision.apply(plan, { ...issue, name: ' ' })).toMatchObject({ path: 'revisions[0].name' });
  expect(issueRevision.apply(plan, { ...issue, issuedOn: 'Monday' })).toMatchObject({ path: 'revisions[0].issuedOn' });
});

test('issue-revision says its name', () => {
  expect(issueRevision.label(plan, issue)).toBe('issue revision B');
});
