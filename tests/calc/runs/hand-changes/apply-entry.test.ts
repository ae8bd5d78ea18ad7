import { expect, test } from 'vitest';
import { applyEntry } from '../../../../src/calc/runs/hand-changes/apply-entry';
import { smallZone } from './small-zone';

test('applyEntry turns a run round that ends at the panel, and leaves one that begins there', () => {
  const zone = smallZone([0, 1, 2], [8]);
  expect(applyEntry(zone, 2)).toEqual({ runs: [[2, 1, 0], [8]] });
  expect(applyEntry(zone, 0)).toEqual({ runs: zone.runs });
});

test('applyEntry leads a run anew from a panel inside it', () => {
  // Two columns of two, entered at place 4 instead of 0.
  expect(applyEntry(smallZone([0, 1, 5, 4]), 1)).toEqual({ runs: [[1, 0, 4, 5]] });
});

test('applyEntry rests where no way through the run begins there, and on a panel without a run', () => {
  expect(applyEntry(smallZone([0, 1, 2]), 1)).toHaveProperty('reason');
  expect(applyEntry(smallZone([0, 1, 2]), 9)).toHaveProperty('reason');
});
