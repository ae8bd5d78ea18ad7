import { describe, expect, it } from 'vitest';
import { computeHeat } from '../../../src/calc/heat/compute-heat';
import { heatInputs, statedHall } from '../../arbitraries/heat-inputs';

describe('computeHeat', () => {
  it('adds surfaces, signal equipment, lamps and 130 W a person (ASHRAE Fundamentals, from memory)', () => {
    const results = computeHeat(heatInputs());
    expect(results.bySource).toEqual([
      { name: 'Panels of A', fullWhiteW: 54_000, typicalW: expect.closeTo(23_760, 6) },
      { name: 'Processors, breakouts and nodes', fullWhiteW: 4000, typicalW: 4000 },
      { name: 'Lamps', fullWhiteW: 2000, typicalW: 2000 },
      { name: 'People', fullWhiteW: 1300, typicalW: 1300 },
    ]);
    expect(results.fullWhiteW).toBe(61_300);
    expect(results.typicalW).toBeCloseTo(31_060, 6);
  });

  it('is 61.3 kW x 3.412142 = 209 164 Btu/h, 17.43 tons, 5.08 m3/s at 10 K', () => {
    const results = computeHeat(heatInputs());
    expect(results.fullWhiteBtuh).toBeCloseTo(209_164.3, 0);
    expect(results.fullWhiteTons).toBeCloseTo(17.4304, 3);
    expect(results.airM3PerS).toBeCloseTo(5.0779, 4);
  });

  it('says how soon the hall warms up, or null where nobody stated it', () => {
    expect(computeHeat(heatInputs()).warmUpMin).toBeNull();
    expect(computeHeat(heatInputs({ hall: statedHall })).warmUpMin).toBeCloseTo(20.48, 2); // 251.1 s x 300 / 61.3
  });
});
