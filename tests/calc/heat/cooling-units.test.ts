import { expect, test } from 'vitest';
import worked from '../../../fixtures/reference/heat.json';
import { wattsToBtuh, wattsToTons } from '../../../src/calc/heat/cooling-units';

const valuesOf = (name: string) => worked.examples.find((e) => e.name === name)!.values as Record<string, number>;

test('wattsToBtuh: one watt is 3.412141633 Btu(IT)/h, of 1055.05585262 J each', () => {
  expect(wattsToBtuh(1)).toBeCloseTo(valuesOf('unit factors').btuhPerWatt!, 9);
});

test('wattsToTons: 12 000 Btu/h, which are 3.516852842 kW', () => {
  const { tonKW } = valuesOf('unit factors');
  expect(wattsToTons(tonKW! * 1000)).toBeCloseTo(1, 8);
});

test('wattsToBtuh and wattsToTons of the printed 10 kW', () => {
  const printed = valuesOf('10 kW at 20 F rise');
  expect(wattsToBtuh(10_000)).toBeCloseTo(printed.btuh!, 2);
  expect(wattsToTons(10_000)).toBeCloseTo(printed.tons!, 5);
});
