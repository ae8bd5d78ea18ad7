import { describe, expect, it } from 'vitest';
import { serviceLimitA } from '../../../src/calc/power/service-limit';
import { powerOf } from '../../arbitraries/power-surfaces';

const point = (id: string, legA: number) => ({ id, name: id, legA });

describe('serviceLimitA', () => {
  it('takes the usable share of all points together: 400 A and 200 A carry 480 A that last (NEC 215.3)', () => {
    expect(serviceLimitA(powerOf({ servicePoints: [point('a', 400), point('b', 200)] }))).toBeCloseTo(480, 9);
  });

  it('is null where nobody stated a point', () => {
    expect(serviceLimitA(powerOf())).toBeNull();
  });
});
