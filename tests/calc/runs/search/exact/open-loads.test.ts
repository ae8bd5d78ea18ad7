import { expect, test } from 'vitest';
import { OpenLoads } from '../../../../../src/calc/runs/search/exact/open-loads';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';

const region = (panels: number, counting: 'panels' | 'rectangle', panelsMost = 1000) =>
  regionOf(block(3, 3), { ...aPort(panels, counting), panelsMost }, Int32Array.from(Array(9).keys()));

test('OpenLoads adds up pixels in units of the panel, up to what a port takes', () => {
  const loads = new OpenLoads(region(3, 'panels'));
  const state = new Int32Array(2 * loads.fields);
  loads.begin(state, 0, 0);
  expect([loads.add(state, 0, 1), loads.add(state, 0, 2), loads.pixelsOn(state, 0)]).toEqual([
    true,
    true,
    3 * 216 * 216,
  ]);
  expect(loads.add(state, 0, 3)).toBe(false);
});

test('OpenLoads counts panels where these are the limit', () => {
  const loads = new OpenLoads(region(9, 'panels', 2));
  const state = new Int32Array(loads.fields);
  loads.begin(state, 0, 0);
  expect([loads.add(state, 0, 1), loads.add(state, 0, 2)]).toEqual([true, false]);
});

test('OpenLoads widens a rectangle, and joins two with the cell between', () => {
  const loads = new OpenLoads(region(6, 'rectangle'));
  const state = new Int32Array(2 * loads.fields);
  // Cells 0 (column 0, row 0) and 6 (column 2, row 0), joined by cell 3: 3 x 1. With cell 4 it is 3 x 2, with cell 5 3 x 3.
  loads.begin(state, 0, 0);
  loads.begin(state, loads.fields, 6);
  expect(loads.join(state, 0, loads.fields, 3)).toBe(true);
  expect([loads.add(state, 0, 4), loads.add(state, 0, 5)]).toEqual([true, false]);
});

test('OpenLoads says where its numbers are too large to be kept exactly', () => {
  expect(new OpenLoads(region(6, 'rectangle')).exact).toBe(true);
  const far = block(2, 1);
  far.pixelLeft[1] = 2 ** 31;
  const limits = aPort(6, 'rectangle');
  expect(new OpenLoads(regionOf(far, limits, Int32Array.from([0, 1]))).exact).toBe(false);
});

test('OpenLoads adds up the panels of what it joins', () => {
  for (const counting of ['panels', 'rectangle'] as const) {
    const most = (panelsMost: number) => {
      const loads = new OpenLoads(region(9, counting, panelsMost));
      const state = new Int32Array(2 * loads.fields);
      loads.begin(state, 0, 0);
      loads.begin(state, loads.fields, 6);
      return loads.join(state, 0, loads.fields, 3);
    };
    expect([most(2), most(3)]).toEqual([false, true]);
  }
});
