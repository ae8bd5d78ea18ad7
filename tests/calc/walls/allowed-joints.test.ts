import { describe, expect, it } from 'vitest';
import { allowedJoints, isAllowedJoint, nearestJoint } from '../../../src/calc/walls/allowed-joints';
import { plainPanel } from '../panels/plain-panel';

const locks = (...lists: number[][]) => lists.map((stepsDeg, i) => plainPanel(`p${i}`, { lock: { stepsDeg } }));

describe('allowedJoints', () => {
  it('is what all locks take, ascending and once each', () => {
    expect(allowedJoints(locks([5, 0, 2.5, 5]))).toEqual([0, 2.5, 5]);
    expect(allowedJoints(locks([0, 2.5, 5], [0, 5, 10]))).toEqual([0, 5]);
    expect(allowedJoints(locks([2.5], [5]))).toEqual([]);
  });

  it('leaves out sheets that state none, and is null where none does', () => {
    expect(allowedJoints(locks([], [0, 5]))).toEqual([0, 5]);
    expect(allowedJoints(locks([], []))).toBeNull();
  });
});

describe('allowedJoints of a lock that folds back', () => {
  it('leaves out what no path can turn by', () => {
    expect(allowedJoints(locks([-120, 0, 90, 180]))).toEqual([0, 90]);
    expect(allowedJoints(locks([120]))).toEqual([]);
  });
});

describe('nearestJoint', () => {
  it('takes the nearest, and of two the smaller turn', () => {
    expect(nearestJoint([-5, 0, 2.5, 5], 3)).toBe(2.5);
    expect(nearestJoint([-5, 0, 2.5, 5], 3.75)).toBe(2.5);
    expect(nearestJoint([-5, -2.5], -3.75)).toBe(-2.5);
    expect(nearestJoint([0, 5], 90)).toBe(5);
    expect(nearestJoint([], 3)).toBeNull();
  });
});

describe('isAllowedJoint', () => {
  it('holds for a step, and for one that rounding has moved', () => {
    expect(isAllowedJoint([0, 2.5], 2.5)).toBe(true);
    expect(isAllowedJoint([0.3], 0.1 + 0.2)).toBe(true);
    expect(isAllowedJoint([0, 2.5], 2.4)).toBe(false);
  });
});
