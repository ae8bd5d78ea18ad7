import { expect, test } from 'vitest';
import { issueRevision } from '../../src/plan/commands/issue-revision';
import { revisionOnPaper } from '../../src/plan/revision-on-paper';
import { taken } from './commands/outcomes';
import { samplePlan } from './sample-plan';

const issue = { issuedOn: '2026-11-25', note: '', names: { processors: [], ports: [], circuits: [] } };
const drafted = { ...samplePlan('flat'), revision: 'B' };
const issued = taken(issueRevision.apply(drafted, { ...issue, name: 'B' }));

test('revisionOnPaper is the name of the plan before it is issued and as it was issued', () => {
  expect([drafted, issued, { ...drafted, revision: '' }].map(revisionOnPaper)).toEqual(['B', 'B', '']);
});

test('revisionOnPaper of a plan changed since does not pass for the issued one, until it has a name of its own', () => {
  const changed = { ...issued, note: 'Called the hall.' };
  expect(revisionOnPaper(changed)).toBe('after B');
  expect(revisionOnPaper({ ...changed, revision: 'C' })).toBe('C');
});

test('revisionOnPaper is blind to ticks of the build: they change nothing that is printed', () => {
  const tick = { step: 'stands', of: 'column', name: 'A C1', done: true, who: 'Crew', atMs: 1 } as const;
  expect(revisionOnPaper({ ...issued, log: { ticks: [tick] } })).toBe('B');
});
