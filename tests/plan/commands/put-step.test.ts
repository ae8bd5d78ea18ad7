import { expect, test } from 'vitest';
import { putStep, type StepChange } from '../../../src/plan/commands/put-step';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan: Plan = { ...samplePlan('version-2'), handChanges: [] };
const from = { surfaceId: 'wall', segmentId: 'left', column: 2, row: 1 };
const to = { ...from, row: 2 };
const put = (before: Plan, change: StepChange) => taken(putStep.apply(before, { change }));

test('put-step adds a change behind the others', () => {
  const after = put(plan, { kind: 'cut', id: 'cut-1', from, to });
  expect(after.handChanges).toEqual([{ kind: 'cut', id: 'cut-1', from, to }]);
  expect(changedGroups(plan, after)).toEqual(['handChanges']);
});

test('put-step lets a join of two panels take out their cut, whichever way round, and the other way about', () => {
  const cut = put(plan, { kind: 'cut', id: 'cut-1', from, to });
  expect(put(cut, { kind: 'join', id: 'join-1', from: to, to: from }).handChanges).toEqual([]);
  const join = put(plan, { kind: 'join', id: 'join-1', from, to });
  expect(put(join, { kind: 'cut', id: 'cut-1', from, to }).handChanges).toEqual([]);
});

test('put-step writes the same change once, the later one', () => {
  const cut = put(plan, { kind: 'cut', id: 'cut-1', from, to });
  expect(put(cut, { kind: 'cut', id: 'cut-2', from: to, to: from }).handChanges.map(({ id }) => id)).toEqual(['cut-2']);
  const entry = put(plan, { kind: 'entry', id: 'entry-1', at: from });
  expect(put(entry, { kind: 'entry', id: 'entry-2', at: from }).handChanges.map(({ id }) => id)).toEqual(['entry-2']);
});

test('put-step leaves changes of other panels and ways of zones alone', () => {
  const way = samplePlan('version-2').handChanges.filter(({ kind }) => kind === 'way');
  const before = { ...plan, handChanges: [...way] };
  const after = put(before, { kind: 'entry', id: 'entry-1', at: from });
  expect(after.handChanges.slice(0, -1)).toEqual(way);
  expect(put(after, { kind: 'cut', id: 'cut-1', from, to }).handChanges).toHaveLength(way.length + 2);
});

test.each(['entry', 'cut', 'join'] as const)('put-step says what it does: %s', (kind) => {
  const change: StepChange = kind === 'entry' ? { kind, id: 'x', at: from } : { kind, id: 'x', from, to };
  expect(putStep.label(plan, { change })).toMatch(/by hand$/);
});
