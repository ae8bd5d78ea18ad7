import { expect, test } from 'vitest';
import { applyCut } from '../../../../src/calc/runs/hand-changes/apply-cut';
import { smallZone } from './small-zone';

test('applyCut gives what follows a port of its own, whichever panel is named first', () => {
  const zone = smallZone([8, 9], [0, 1, 2, 3]);
  expect(applyCut(zone, 1, 2)).toEqual({
    runs: [
      [8, 9],
      [0, 1],
      [2, 3],
    ],
  });
  expect(applyCut(zone, 2, 1)).toEqual({
    runs: [
      [8, 9],
      [0, 1],
      [2, 3],
    ],
  });
});

test('applyCut rests where the two do not follow each other', () => {
  const zone = smallZone([0, 1, 2, 3], [4, 5]);
  expect(applyCut(zone, 0, 2)).toHaveProperty('reason');
  expect(applyCut(zone, 0, 4)).toHaveProperty('reason');
  expect(applyCut(zone, 3, 0)).toHaveProperty('reason');
  expect(applyCut(zone, 11, 10)).toHaveProperty('reason');
});
