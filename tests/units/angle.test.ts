import { describe, expect, it } from 'vitest';
import { type Degrees, degrees, radians, toDegrees, toRadians } from '../../src/units/angle';

describe('toRadians', () => {
  it('takes half a turn to pi', () => {
    expect(toRadians(degrees(180))).toBe(Math.PI);
    expect(toRadians(degrees(-90))).toBe(-Math.PI / 2);
  });

  it('refuses an angle that is in radians already, at compile time', () => {
    // @ts-expect-error radians are not degrees
    const wrong: Degrees = radians(1);
    expect(wrong).toBe(1);
  });
});

describe('toDegrees', () => {
  it('takes pi to half a turn', () => {
    expect(toDegrees(radians(Math.PI))).toBe(180);
  });

  it('undoes toRadians', () => {
    for (const angle of [0, 2.5, 7.5, 33.3, 179.9, -45]) {
      expect(toDegrees(toRadians(degrees(angle)))).toBeCloseTo(angle, 12);
    }
  });
});
