import { describe, expect, it } from 'vitest';
import electrical from '../../../fixtures/reference/electrical.json';
import { harmonicNeutral, neutralBound } from '../../../src/calc/power/harmonic-neutral';

describe('harmonicNeutral', () => {
  const example = electrical.examples.find((e) => e.name.startsWith('triplen'))!;
  const spectrum = Object.entries({ 1: 100, 3: 50, 5: 20, 7: 10, 9: 8, 11: 4, 13: 2 }).map(([order, currentA]) => ({
    order: Number(order),
    currentA,
  }));

  it('of the published spectrum gives its neutral and leg current (Masters, eq. 2.102)', () => {
    const printed = example.values as { neutral: number; phaseRms: number; ratio: number };
    const { legA, neutralA } = harmonicNeutral(spectrum);
    expect(legA).toBeCloseTo(printed.phaseRms, 3);
    expect(neutralA).toBeCloseTo(printed.neutral, 3);
    expect(neutralA / legA).toBeCloseTo(printed.ratio, 3);
    expect(neutralA / legA).toBeLessThan(neutralBound);
  });

  it('of a pure sine is 0', () => {
    expect(harmonicNeutral([{ order: 1, currentA: 30 }]).neutralA).toBe(0);
  });

  it('neutralBound: three pulses that never overlap add as squares to sqrt 3', () => {
    // By hand: rms of one pulse train a third of the time is I; of three of them one after the other sqrt(3 I^2).
    expect(neutralBound).toBeCloseTo(1.7320508, 7);
  });
});
