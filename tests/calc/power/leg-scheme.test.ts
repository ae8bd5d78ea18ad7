import { describe, expect, it } from 'vitest';
import { legScheme, legToLegFactor } from '../../../src/calc/power/leg-scheme';
import { powerOf } from '../../arbitraries/power-surfaces';

describe('legScheme', () => {
  // Nominal voltages of IEC 60038 and ANSI C84.1: 230/400, 277/480, 120/208 three-phase and 120/240 single-phase three-wire, from memory.
  it.each([
    ['wye', 230, 400],
    ['wye', 277, 480],
    ['wye', 120, 208],
    ['split-phase', 120, 240],
  ] as const)('%s of %i V to neutral is called %i V between legs', (kind, legToNeutralV, betweenLegsV) => {
    const power = powerOf({ supply: { kind, legToNeutralV, lowestShare: 1 }, connection: 'leg-to-leg' });
    expect(Math.abs(legScheme(power).nominalV / betweenLegsV - 1)).toBeLessThan(0.005);
    expect(legScheme({ ...power, connection: 'leg-to-neutral' }).nominalV).toBe(legToNeutralV);
  });

  it('takes the low end of the range as a share of nominal', () => {
    const scheme = legScheme(powerOf({ supply: { kind: 'wye', legToNeutralV: 230, lowestShare: 0.9 } }));
    expect(scheme.lowestV).toBeCloseTo(207, 9);
  });

  it('names branches as the crew does: legs, three pairs, or one pair', () => {
    const branches = (kind: 'wye' | 'split-phase', connection: 'leg-to-neutral' | 'leg-to-leg') =>
      legScheme(powerOf({ supply: { kind, legToNeutralV: 120, lowestShare: 1 }, connection })).branches;
    expect(branches('wye', 'leg-to-neutral')).toEqual(['L1', 'L2', 'L3']);
    expect(branches('wye', 'leg-to-leg')).toEqual(['L1-L2', 'L2-L3', 'L3-L1']);
    expect(branches('split-phase', 'leg-to-neutral')).toEqual(['L1', 'L2']);
    expect(branches('split-phase', 'leg-to-leg')).toEqual(['L1-L2']);
  });

  it('legToLegFactor: sqrt 3 about a star point, 2 about a centre tap', () => {
    expect(legToLegFactor('wye')).toBe(Math.sqrt(3));
    expect(legToLegFactor('split-phase')).toBe(2);
  });
});
