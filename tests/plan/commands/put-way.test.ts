import { expect, test } from 'vitest';
import { putWay } from '../../../src/plan/commands/put-way';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('version-2');
const at = { surfaceId: 'wall', segmentId: 'left', column: 2, row: 1 };
const way = { kind: 'folded', wide: 2 } as const;

test('put-way adds the choice behind the others', () => {
  const after = taken(putWay.apply(plan, { id: 'change-7', at, way }));
  expect(after.handChanges).toEqual([...plan.handChanges, { kind: 'way', id: 'change-7', at, way }]);
  expect(changedGroups(plan, after)).toEqual(['handChanges']);
});

test('put-way replaces the choice at the same panel, and those it is told of', () => {
  const same = { surfaceId: 'wall', segmentId: 'right', column: 7, row: 1 };
  const ids = (after: typeof plan) => after.handChanges.map(({ id }) => id);
  expect(ids(taken(putWay.apply(plan, { id: 'change-7', at: same, way })))).not.toContain('change-4');
  const told = taken(putWay.apply(plan, { id: 'change-7', at, way, replaces: ['change-5', 'change-6'] }));
  expect(ids(told)).toEqual(['change-1', 'change-2', 'change-3', 'change-4', 'change-7']);
});

test('put-way leaves an entry, a cut or a join at the same panel', () => {
  const entry = { surfaceId: 'wall', segmentId: 'left', column: 1, row: 1 };
  expect(taken(putWay.apply(plan, { id: 'change-7', at: entry, way })).handChanges).toHaveLength(7);
});

test('put-way refuses an id that is taken and a way that is none', () => {
  expect(putWay.apply(plan, { id: 'change-1', at, way })).toMatchObject({ path: 'handChanges[6].id' });
  expect(putWay.apply(plan, { id: 'change-7', at, way: { kind: 'folded', wide: 0 } })).toEqual({
    refused: 'at least 1',
    path: 'handChanges[6].way.wide',
  });
});

test.each([
  [{ kind: 'columns' }, 'wire by columns'],
  [{ kind: 'folded', wide: 3 }, 'wire folded 3 wide'],
  [{ kind: 'split', aboveRow: 4, wide: 2 }, 'wire split above row 4, 2 wide below'],
  [{ kind: 'rows' }, 'wire by rows'],
  [{ kind: 'free' }, 'wire freely'],
] as const)('put-way says %j in words', (chosen, words) => {
  expect(putWay.label(plan, { id: 'change-7', at, way: chosen })).toBe(words);
});
