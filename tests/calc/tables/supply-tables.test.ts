import { expect, test } from 'vitest';
import { air } from '../../../src/calc/tables/air';
import { continuousLoad } from '../../../src/calc/tables/continuous-load';
import { earthLeakage } from '../../../src/calc/tables/earth-leakage';
import { btuhAWatt, heatUnits } from '../../../src/calc/tables/heat-units';
import { peopleHeat } from '../../../src/calc/tables/people-heat';
import { standardGravity } from '../../../src/calc/tables/standard-gravity';

// Each figure typed a second time by hand, so that a slip in a table does not pass as its own proof.
test('tables of supply hold what their sources say', () => {
  expect(1.25 * continuousLoad.usableShare).toBe(1); // NEC 210.20(A): 125 % of the continuous load
  expect(continuousLoad.lastsHours).toBe(3); // NEC article 100
  expect(earthLeakage.share * earthLeakage.tripMa).toBeCloseTo(9, 12); // IEC 60364-5-53, from memory
  expect(heatUnits.joulesABtu).toBeCloseTo(2326 * 0.45359237, 9); // 2326 J/kg for 1 Btu(IT)/lb, avoirdupois pound
  expect(btuhAWatt).toBeCloseTo(3.412142, 6);
  expect(heatUnits.btuhATon).toBe(12_000);
  expect([air.densityKgPerM3, air.heatJPerKgK]).toEqual([1.2, 1006]);
  expect(peopleHeat.wattsAPerson).toBe(130);
  expect(standardGravity.metresPerSecond2).toBe(9.80665); // CGPM 1901
});

test('tables of supply name their sources', () => {
  for (const { source } of [continuousLoad, earthLeakage, heatUnits, air, peopleHeat, standardGravity]) {
    expect(source.length).toBeGreaterThan(10);
  }
});
