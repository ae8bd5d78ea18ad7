import { expect, it } from 'vitest';
import electrical from '../../../fixtures/reference/electrical.json';
import { neutralBound } from '../../../src/calc/power/neutral-bound';

it('neutralBound: three pulses that never overlap add as squares to sqrt 3', () => {
  // By hand: rms of one pulse train a third of the time is I; of three of them one after the other sqrt(3 I^2).
  expect(neutralBound).toBeCloseTo(1.7320508, 7);
});

it('neutralBound is above the neutral of the published spectrum (Masters, example 2.13)', () => {
  const example = electrical.examples.find((e) => e.name.startsWith('triplen'))!;
  const { neutral, phaseRms } = example.values as { neutral: number; phaseRms: number };
  expect(neutral / phaseRms).toBeGreaterThan(1);
  expect(neutral / phaseRms).toBeLessThan(neutralBound);
});
