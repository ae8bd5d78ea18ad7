import { expect, test } from 'vitest';
import { CableEstimate } from '../../../../src/calc/runs/search/cable-estimate';
import { homeLengths } from '../../../../src/calc/runs/search/home-lengths';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

test('homeLengths is down to the lowest row and along it to the middle column, as CableEstimate adds it up', () => {
  const grid = { ...block(4, 3), columnPitchMm: 500, rowPitchMm: 700 };
  const home = homeLengths(grid, regionOf(grid, aPort(9), Int32Array.from(Array(12).keys())));
  // Column 0 is one and a half from the middle of four; row 2 is two up.
  expect(home[2]).toBe(1.5 * 500 + 2 * 700);
  home.forEach((length, place) => {
    const cable = new CableEstimate(grid, 0);
    cable.addHome(place);
    expect(length).toBe(cable.totalMm());
  });
});
