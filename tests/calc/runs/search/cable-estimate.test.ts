import { expect, test } from 'vitest';
import { CableEstimate } from '../../../../src/calc/runs/search/cable-estimate';
import { block } from './block-of-panels';

const grid = { ...block(3, 3), columnPitchMm: 500, rowPitchMm: 1000 };

test('CableEstimate leads home down to the lowest row and along it to the middle column', () => {
  const cable = new CableEstimate(grid, 0);
  // Column 0, row 1: one column to the middle of three, one row down.
  cable.addHome(1);
  expect(cable.totalMm()).toBe(500 + 1000);
  // The middle column, row 2.
  cable.addHome(5);
  expect(cable.totalMm()).toBe(1500 + 2000);
});

test('CableEstimate counts rows from the lowest one with a panel', () => {
  const cable = new CableEstimate(grid, 1);
  cable.addHome(1);
  expect(cable.totalMm()).toBe(500);
});

test('CableEstimate counts a jumper as one pitch', () => {
  const cable = new CableEstimate(grid, 0);
  cable.addJumpers(3, 2);
  expect(cable.totalMm()).toBe(3 * 500 + 2 * 1000);
});
