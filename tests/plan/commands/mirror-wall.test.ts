import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mirrorWall } from '../../../src/plan/commands/mirror-wall';
import { anyPlan } from '../../arbitraries/plan';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

const plan = samplePlan('version-2');

test('mirror-wall swaps left and right of path, holes and changes by hand, where the wall stands', () => {
  const after = taken(mirrorWall.apply(plan, { wallId: 'wall' }));
  const [wall] = after.walls;
  expect(wall!.path.map(({ id, jointBeforeDeg }) => [id, jointBeforeDeg])).toEqual([
    ['right', 0],
    ['left', 2.5],
  ]);
  expect(wall!.place).toBe(plan.walls[0]!.place);
  // The door takes columns 2 and 3 of the six of 'left': 4 and 5 from the other end.
  expect(wall!.holes[0]).toMatchObject({ segmentId: 'left', column: 4, row: 1 });
  // Entry at column 1 of six: column 6. Way at column 7 of seven of 'right': column 1.
  expect(after.handChanges[0]).toMatchObject({ at: { segmentId: 'left', column: 6, row: 1 } });
  expect(after.handChanges[3]).toMatchObject({ at: { segmentId: 'right', column: 1, row: 1 } });
  // The way on a ceiling is no business of the wall.
  expect(after.handChanges[4]).toBe(plan.handChanges[4]);
  expect(changedGroups(plan, after)).toEqual(['walls', 'handChanges']);
});

test('mirror-wall twice is the plan again, holes that reach beyond the wall apart', () => {
  fc.assert(
    fc.property(anyPlan(), (any) => {
      fc.pre(any.walls.length > 0);
      const wallId = any.walls[0]!.id;
      const once = taken(mirrorWall.apply(any, { wallId }));
      const twice = taken(mirrorWall.apply(once, { wallId }));
      const withoutHoles = { ...twice, walls: twice.walls.map((wall, k) => ({ ...wall, holes: any.walls[k]!.holes })) };
      expect(withoutHoles).toEqual(any);
    }),
  );
});

test('mirror-wall leaves a change by hand that rests beyond its segment where it was written', () => {
  // 1 - (-9999) would be column 10,000 and more, which no document holds.
  const at = { surfaceId: 'wall', segmentId: 'left', column: -9999, row: 1 };
  const resting = { ...plan, handChanges: [{ kind: 'entry', id: 'rests', at }] } satisfies typeof plan;
  expect(taken(mirrorWall.apply(resting, { wallId: 'wall' })).handChanges).toEqual(resting.handChanges);
});

test('mirror-wall refuses a wall that is not there, and says the letter', () => {
  expect(mirrorWall.apply(plan, { wallId: 'first' })).toEqual({ refused: `there is no wall 'first'`, path: 'walls' });
  expect(mirrorWall.label(plan, { wallId: 'wall' })).toBe('mirror A');
});
