import { expect, test } from 'vitest';
import { asIssued } from '../../src/plan/as-issued';
import { issueRevision } from '../../src/plan/commands/issue-revision';
import { parsePlan } from '../../src/plan/parse-plan';
import { serialisePlan } from '../../src/plan/serialise-plan';
import { taken } from './commands/outcomes';
import { samplePlan } from './sample-plan';

const issue = { issuedOn: '2026-11-25', note: '', names: { processors: [], ports: [], circuits: [] } };
const plan = taken(issueRevision.apply(samplePlan('flat'), { ...issue, name: 'B' }));

test('asIssued has the revision that was just issued, after saving and opening too', () => {
  expect([...asIssued(plan)]).toEqual(['revision-1']);
  const opened = parsePlan(serialisePlan(plan));
  expect([...asIssued((opened as { plan: typeof plan }).plan)]).toEqual(['revision-1']);
});

test('asIssued has none once anything is planned otherwise, and none where nothing was issued', () => {
  expect(asIssued({ ...plan, note: 'Called the hall.' }).size).toBe(0);
  expect(asIssued({ ...plan, revisions: [] }).size).toBe(0);
});

test('asIssued is blind to ticks of the build', () => {
  const tick = { step: 'stands', of: 'column', name: 'A C1', done: true, who: 'Crew', atMs: 1 } as const;
  expect(asIssued({ ...plan, log: { ticks: [tick] } }).size).toBe(1);
});
