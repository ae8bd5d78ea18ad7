import { describe, expect, it } from 'vitest';
import worked from '../../../fixtures/reference/heat.json';
import { airFlowM3PerS } from '../../../src/calc/heat/air-flow';
import { btuhAWatt } from '../../../src/calc/tables/heat-units';

const valuesOf = (name: string) => worked.examples.find((e) => e.name === name)!.values as Record<string, number>;
const cfmAM3PerS = 60 / 0.3048 ** 3; // exact foot

describe('airFlowM3PerS', () => {
  it('100 kW at 10 K ask 8.3 m3/s (by hand: 100 000 / (1.2 x 1006 x 10))', () => {
    expect(airFlowM3PerS(100_000, 10)).toBeCloseTo(8.2836, 4);
  });

  it('is the SI figure of the worked example within the 1005 that it takes for cp', () => {
    expect(airFlowM3PerS(10_000, 100 / 9)).toBeCloseTo(valuesOf('10 kW at 20 F rise').m3s_SI! * (1005 / 1006), 6);
  });

  it.each([
    ['113 400 Btu/h at 20 F', 113_400, 20],
    ['5000 Btu/h at 10 F', 5000, 10],
  ])('agrees within 0.5 %% with the rule of 1.08 of %s', (name, btuh, riseF) => {
    // The rule takes air of 0.075 lb/ft3 and 0.24 Btu/(lb F), 1.2014 kg/m3 and 1004.8 J/(kg K).
    const cfm = airFlowM3PerS(btuh / btuhAWatt, (riseF * 5) / 9) * cfmAM3PerS;
    expect(Math.abs(cfm / valuesOf(name).cfm! - 1)).toBeLessThan(0.005);
  });
});
