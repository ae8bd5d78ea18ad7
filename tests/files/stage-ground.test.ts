import { expect, test } from 'vitest';
import { stageGround } from '../../src/files/stage-ground';
import { cornerSurfaces } from '../calc/outputs/corner-stage';

test('stageGround is the hall’s floor where it is stated', () => {
  const hall = { leftMm: -1, rightMm: 2, lowMm: -3, highMm: 4 };
  expect(stageGround(cornerSurfaces, hall)).toBe(hall);
});

test('stageGround goes 2 m beyond the outermost panels where no hall is stated', () => {
  // Panels of the corner stand from x 0 to 500 and from y -2250 to 0.
  expect(stageGround(cornerSurfaces, null)).toEqual({ leftMm: -2000, rightMm: 2500, lowMm: -4250, highMm: 2000 });
  expect(stageGround({ surfaces: [], offsets: [], total: 0 }, null)).toMatchObject({ leftMm: -2000, rightMm: 2000 });
});
