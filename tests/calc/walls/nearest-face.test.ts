import { describe, expect, it } from 'vitest';
import { nearestFace } from '../../../src/calc/walls/nearest-face';

const faces = Float64Array.of(0, 0, 500, 0, 500, 0, 500, 500);

describe('nearestFace', () => {
  it('drops a perpendicular where the foot lies on a face', () => {
    expect(nearestFace(faces, 200, -300)).toEqual({ column: 0, xMm: 200, yMm: 0, distanceMm: 300 });
    expect(nearestFace(faces, 600, 300)).toEqual({ column: 1, xMm: 500, yMm: 300, distanceMm: 100 });
  });

  it('takes the end of a face where the foot lies beyond it', () => {
    // 3-4-5: from (-300, -400) to (0, 0).
    expect(nearestFace(faces, -300, -400)).toEqual({ column: 0, xMm: 0, yMm: 0, distanceMm: 500 });
  });

  it('drops a perpendicular on a slanting face, wherever it lies', () => {
    // The face from (100, 200) along 4-3-5: its foot is 50 on, 100 away on the right of it.
    const slanting = Float64Array.of(100, 200, 500, 500);
    const found = nearestFace(slanting, 100 + 40 + 60, 200 + 30 - 80)!;
    expect(found.xMm).toBeCloseTo(140, 9);
    expect(found.yMm).toBeCloseTo(230, 9);
    expect(found.distanceMm).toBeCloseTo(100, 9);
  });

  it('gives null without faces', () => {
    expect(nearestFace(new Float64Array(0), 0, 0)).toBeNull();
  });
});
