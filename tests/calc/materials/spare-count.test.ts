import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spareCount, spareRule } from '../../../src/calc/materials/spare-count';

const rule = { spareShare: 0.03, spareLeast: 1, byItem: [{ itemId: 'p', share: 0.05, least: 4 }] };

describe('spareCount', () => {
  it('takes the share rounded up, at least the least, its own rule where an item has one', () => {
    expect(spareCount(rule, 'x', 101)).toBe(4); // 3.03
    expect(spareCount(rule, 'x', 10)).toBe(1);
    expect(spareCount(rule, 'p', 10)).toBe(4);
    expect(spareCount(rule, 'p', 101)).toBe(6); // 5.05
  });

  it('is 0 where nothing is needed', () => {
    expect(spareCount(rule, 'p', 0)).toBe(0);
  });

  it('keeps whole shares whole: 7 % of 100 are 7, though 0.07 x 100 is more in floats', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 1, max: 2000 }), (percent, hundreds) => {
        const materials = { spareShare: percent / 100, spareLeast: 0, byItem: [] };
        expect(spareCount(materials, 'x', hundreds * 100)).toBe(percent * hundreds);
      }),
    );
  });

  it('spareRule names the rule that holds', () => {
    expect(spareRule(rule, 'p')).toMatchObject({ share: 0.05, least: 4 });
    expect(spareRule(rule, 'x')).toEqual({ share: 0.03, least: 1 });
  });
});
