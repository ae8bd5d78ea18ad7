import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import electrical from '../../../fixtures/reference/electrical.json';
import { fitsWithin, panelsWithin } from '../../../src/calc/power/panels-within';

describe('panelsWithin', () => {
  // Panels of 150 W at power factor 0.95 and share 0.8. common practice, no source.
  it.each([
    [16, 230, 18],
    [20, 208, 21],
    [20, 120, 12],
  ])('%i A at %i V takes %i panels of 150 W', (ratedA, volts, panels) => {
    expect(panelsWithin(ratedA * 0.8, 150 / (volts * 0.95))).toBe(panels);
  });

  it('keeps an exact multiple whole, although the float quotient falls short', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 9999 }), (n, milliamps) => {
        expect(panelsWithin((n * milliamps) / 1000, milliamps / 1000)).toBe(n);
      }),
    );
  });

  it('never takes more than the limit, and never one less than could be', () => {
    const amps = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(amps, amps, (limitA, currentA) => {
        const panels = panelsWithin(limitA, currentA);
        expect(fitsWithin(panels * currentA, limitA)).toBe(true);
        expect((panels + 1) * currentA).toBeGreaterThan(limitA);
      }),
    );
  });

  it('of a panel that draws nothing is finite', () => {
    expect(panelsWithin(16, 0)).toBe(250_000);
  });

  it('of a panel above the limit is 0', () => {
    expect(panelsWithin(10, 10.1)).toBe(0);
  });

  it('continuous load: 20 A devices allow 16 A and 400 A allow 320 A (NEC 210.20(A), 215.3)', () => {
    const printed = electrical.examples.find((e) => e.name === 'continuous load')!.values as Record<string, number>;
    expect(panelsWithin(20 * 0.8, 1)).toBe(printed.breaker20A_allows);
    expect(panelsWithin(400 * 0.8, 1)).toBe(printed.breaker400A_allows);
  });
});
