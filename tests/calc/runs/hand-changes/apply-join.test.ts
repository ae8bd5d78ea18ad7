import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyJoin } from '../../../../src/calc/runs/hand-changes/apply-join';
import { areNeighbours } from '../../../../src/calc/runs/hand-changes/are-neighbours';
import { smallZone } from './small-zone';

test('applyJoin leads the end of one run to the beginning of another', () => {
  expect(applyJoin(smallZone([0, 1], [2, 3], [8]), 1, 2)).toEqual({ runs: [[8], [0, 1, 2, 3]] });
});

test('applyJoin turns a run round where that saves a cut', () => {
  // From panel 0, where its run begins, to panel 4, where the other ends.
  expect(applyJoin(smallZone([0, 1], [5, 4]), 0, 4)).toEqual({ runs: [[1, 0, 4, 5]] });
});

test('applyJoin leaves what lies beyond the two panels as runs of their own', () => {
  expect(applyJoin(smallZone([0, 1, 2], [4, 5, 6]), 1, 5)).toEqual({ runs: [[0, 1, 5, 6], [2], [4]] });
});

test('applyJoin of two that follow each other already changes nothing', () => {
  const zone = smallZone([0, 1, 2]);
  expect(applyJoin(zone, 2, 1)).toEqual({ runs: zone.runs });
});

test.each([
  ['share an edge', smallZone([0, 1], [9, 10]), 1, 9],
  ['one run already', smallZone([0, 1, 5, 4]), 0, 4],
  ['on no run', smallZone([0, 1]), 1, 5],
  ['more than a port', smallZone([0, 1, 2, 3], [7, 6, 5]), 3, 7],
] as const)('applyJoin rests: %s', (words, zone, from, to) => {
  const changed = applyJoin(zone, from, to);
  expect('reason' in changed ? changed.reason : '').toContain(words);
});

test('applyJoin holds the chain limit and the rectangle, too', () => {
  const zone = smallZone([0, 1], [2, 3]);
  expect(applyJoin({ ...zone, limits: { ...zone.limits, panelsMost: 3 } }, 1, 2)).toHaveProperty('reason');
  // The three corners of 2 x 2: 30,000 px, but their rectangle has 40,000.
  const corner = smallZone([0, 1], [5]);
  const limits = { ...corner.limits, usablePixels: 35_000 };
  expect(applyJoin({ ...corner, limits }, 1, 5)).toHaveProperty('runs');
  expect(applyJoin({ ...corner, limits: { ...limits, counting: 'rectangle' } }, 1, 5)).toHaveProperty('reason');
});

test('applyJoin loses no panel, doubles none, and runs stay chains of neighbours', () => {
  const place = fc.integer({ min: 0, max: 11 });
  fc.assert(
    fc.property(place, place, (from, to) => {
      const changed = applyJoin(smallZone([0, 1, 2, 3], [7, 6, 5], [4], [8, 9, 10, 11]), from, to);
      if ('reason' in changed) return;
      expect(changed.runs.flat().sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
      for (const run of changed.runs) {
        expect(run.length).toBeLessThanOrEqual(6);
        run.slice(1).forEach((next, i) => {
          expect(areNeighbours({ rows: 4 }, run[i]!, next)).toBe(true);
        });
      }
      expect(changed.runs.some((run) => Math.abs(run.indexOf(from) - run.indexOf(to)) === 1)).toBe(true);
    }),
  );
});
