import { expect, test } from 'vitest';
import { OpenLoads } from '../../../../../src/calc/runs/search/exact/open-loads';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';

const region = (panels: number, counting: 'panels' | 'rectangle', panelsMost = 1000) =>
  regionOf(block(3, 3), { ...aPort(panels, counting), panelsMost }, Int32Array.from(Array(9).keys()));

/** Loads, and states of two chains, of the cells 0 and 6 (columns 0 and 2 of row 0). */
const twoChains = (panels: number, counting: 'panels' | 'rectangle', panelsMost = 1000) => {
  const loads = new OpenLoads(region(panels, counting, panelsMost));
  const state = new Int32Array(2 * loads.fields);
  loads.begin(state, 0, 0);
  loads.begin(state, loads.fields, 6);
  return { loads, state, other: loads.fields };
};

test('OpenLoads adds up pixels in units of the panel, up to what a port takes', () => {
  const { loads, state } = twoChains(3, 'panels');
  expect(loads.unit).toBe(216 * 216);
  expect([loads.lead(state, 0, 1), loads.lead(state, 0, 2), loads.lead(state, 0, 3)]).toEqual([true, true, false]);
});

test('OpenLoads has taken what a chain begins with and what it takes, not what it is led to', () => {
  for (const counting of ['panels', 'rectangle'] as const) {
    const { loads, state } = twoChains(9, counting);
    loads.lead(state, 0, 1);
    const led = loads.unitsOn(state, 0);
    loads.take(state, 0, 1);
    expect([led, loads.unitsOn(state, 0)]).toEqual([1, 2]);
  }
});

test('OpenLoads counts panels where these are the limit', () => {
  const { loads, state } = twoChains(9, 'panels', 2);
  expect([loads.lead(state, 0, 1), loads.lead(state, 0, 2)]).toEqual([true, false]);
});

test('OpenLoads widens a rectangle, and joins two that are led to the cell between', () => {
  const { loads, state, other } = twoChains(6, 'rectangle');
  // Cell 3 lies between: 3 x 1. With cell 4 it is 3 x 2, with cell 5 3 x 3.
  loads.lead(state, 0, 3);
  loads.lead(state, other, 3);
  expect(loads.join(state, 0, other, 3)).toBe(true);
  loads.take(state, 0, 3);
  expect(loads.unitsOn(state, 0)).toBe(3);
  expect([loads.lead(state, 0, 4), loads.lead(state, 0, 5)]).toEqual([true, false]);
});

test('OpenLoads counts the cell between once where it joins', () => {
  for (const counting of ['panels', 'rectangle'] as const) {
    const joins = (panels: number, panelsMost: number) => {
      const { loads, state, other } = twoChains(panels, counting, panelsMost);
      loads.lead(state, 0, 3);
      loads.lead(state, other, 3);
      return loads.join(state, 0, other, 3);
    };
    expect([joins(9, 2), joins(9, 3), joins(2, 1000), joins(3, 1000)]).toEqual([false, true, false, true]);
  }
});

test('OpenLoads says where its numbers are too large to be kept exactly', () => {
  expect(new OpenLoads(region(6, 'rectangle')).exact).toBe(true);
  const far = block(2, 1);
  far.pixelLeft[1] = 2 ** 31;
  const limits = aPort(6, 'rectangle');
  expect(new OpenLoads(regionOf(far, limits, Int32Array.from([0, 1]))).exact).toBe(false);
});
