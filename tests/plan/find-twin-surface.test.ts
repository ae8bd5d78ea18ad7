import { expect, test } from 'vitest';
import { findTwinSurface } from '../../src/plan/find-twin-surface';
import { samplePlan } from './sample-plan';

const { walls, ceilings } = samplePlan('horseshoe');
const [wall] = walls;
const [ceiling] = ceilings;

test('findTwinSurface finds nothing where all surfaces differ', () => {
  expect(findTwinSurface({ walls, ceilings })).toBeUndefined();
});

test('findTwinSurface finds an id and a letter that an earlier surface has, across walls and ceilings', () => {
  expect(findTwinSurface({ walls: [...walls, { ...wall!, letter: 'C' }], ceilings })).toEqual({
    path: ['walls', 1, 'id'],
    reason: `another surface has 'wall' already`,
  });
  expect(findTwinSurface({ walls, ceilings: [{ ...ceiling!, letter: 'A' }] })).toEqual({
    path: ['ceilings', 0, 'letter'],
    reason: `another surface has 'A' already`,
  });
});
