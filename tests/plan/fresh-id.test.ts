import fc from 'fast-check';
import { expect, test } from 'vitest';
import { freshId } from '../../src/plan/fresh-id';
import { anyPlan } from '../arbitraries/plan';
import { samplePlan } from './sample-plan';

test('freshId counts on from the highest that stands anywhere', () => {
  const plan = samplePlan('flat');
  expect(freshId(plan, 'wall')).toBe('wall-1');
  plan.walls[0]!.id = 'wall-6';
  expect(freshId(plan, 'wall')).toBe('wall-7');
  expect(freshId(plan, 'wal')).toBe('wal-1');
});

test('freshId counts an id that is only referred to, so that a resting change does not take hold of something new', () => {
  const plan = samplePlan('version-2');
  plan.handChanges.push({
    kind: 'entry',
    id: 'change-9',
    at: { surfaceId: 'gone', segmentId: 'segment-12', column: 1, row: 1 },
  });
  expect(freshId(plan, 'segment')).toBe('segment-13');
  expect(freshId(plan, 'change')).toBe('change-10');
});

test('freshId gives an id that the plan does not have, the same each time', () => {
  fc.assert(
    fc.property(anyPlan(), fc.constantFrom('wall', 'segment', 'panel', 'change'), (plan, stem) => {
      const id = freshId(plan, stem);
      expect(withoutWiring(plan)).not.toContain(`"${id}"`);
      expect(freshId(plan, stem)).toBe(id);
    }),
  );
});

/** The text of a plan without the lists in which no id stands. */
function withoutWiring(plan: object): string {
  return JSON.stringify(plan, (key, value: unknown) => (key === 'existingWiring' || key === 'ticks' ? null : value));
}
