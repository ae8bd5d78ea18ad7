import { expect, test } from 'vitest';
import { setMode } from '../../../src/plan/commands/set-mode';
import type { Mode } from '../../../src/plan/picture';
import { samplePlan } from '../sample-plan';
import { changedGroups, taken } from './outcomes';

// The wall runs at 50 fps and 10 bit, the ceiling at 50 and 8.
const plan = samplePlan('horseshoe');
const film: Mode = { rate: { frames: 24_000, seconds: 1001 }, depthBits: 10, pictures: 1 };

test('set-mode for all surfaces becomes what the stage runs at', () => {
  for (const surfaceIds of [null, ['wall', 'ceiling'], ['ceiling', 'wall', 'wall']]) {
    const after = taken(setMode.apply(plan, { surfaceIds, mode: film }));
    expect(after.picture).toMatchObject({ base: film, bySurface: [] });
    expect(after.picture.alsoServe).toBe(plan.picture.alsoServe);
    expect(changedGroups(plan, after)).toEqual(['picture']);
  }
});

test('set-mode for one surface leaves the others', () => {
  const after = taken(setMode.apply(plan, { surfaceIds: ['ceiling'], mode: film }));
  expect(after.picture).toMatchObject({ base: plan.picture.base, bySurface: [{ surfaceId: 'ceiling', mode: film }] });
  const wall = taken(setMode.apply(plan, { surfaceIds: ['wall'], mode: film }));
  expect(wall.picture.bySurface.map(({ surfaceId }) => surfaceId)).toEqual(['ceiling', 'wall']);
});

test('set-mode to what the stage runs at anyway keeps no entry, however the rate is written', () => {
  const alike: Mode = { ...plan.picture.base, rate: { frames: 100, seconds: 2 } };
  expect(taken(setMode.apply(plan, { surfaceIds: ['ceiling'], mode: alike })).picture.bySurface).toEqual([]);
});

test('set-mode for no surface is no change, on a stage without surfaces too', () => {
  expect(taken(setMode.apply(plan, { surfaceIds: [], mode: film }))).toBe(plan);
  const bare = { ...plan, walls: [], ceilings: [] };
  expect(taken(setMode.apply(bare, { surfaceIds: [], mode: film }))).toBe(bare);
  expect(taken(setMode.apply(bare, { surfaceIds: null, mode: film })).picture.base).toEqual(film);
});

test('set-mode refuses a surface that is not there and a rate that is none', () => {
  expect(setMode.apply(plan, { surfaceIds: ['floor'], mode: film })).toMatchObject({
    refused: `there is no surface 'floor'`,
  });
  const still = { ...film, rate: { frames: 0, seconds: 1 } };
  expect(setMode.apply(plan, { surfaceIds: null, mode: still })).toEqual({
    refused: 'at least 1',
    path: 'picture.base.rate.frames',
  });
});

test('set-mode says rate, depth and letters', () => {
  expect(setMode.label(plan, { surfaceIds: null, mode: film })).toBe('23.976 fps, 10 bit');
  expect(setMode.label(plan, { surfaceIds: ['ceiling'], mode: film })).toBe('23.976 fps, 10 bit on B');
});
