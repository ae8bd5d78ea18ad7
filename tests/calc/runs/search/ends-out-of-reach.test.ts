import { expect, test } from 'vitest';
import { endsOutOfReach } from '../../../../src/calc/runs/search/ends-out-of-reach';

const outOfReach = Uint8Array.from([0, 1, 1]);

test('endsOutOfReach without a return: one end in reach is enough', () => {
  expect([
    endsOutOfReach(outOfReach, 0, 1, false),
    endsOutOfReach(outOfReach, 1, 0, false),
    endsOutOfReach(outOfReach, 1, 2, false),
    endsOutOfReach(outOfReach, 1, 1, false),
  ]).toEqual([0, 0, 1, 1]);
});

test('endsOutOfReach with a return: both ends count, one panel once', () => {
  expect([
    endsOutOfReach(outOfReach, 0, 1, true),
    endsOutOfReach(outOfReach, 1, 2, true),
    endsOutOfReach(outOfReach, 1, 1, true),
    endsOutOfReach(outOfReach, 0, 0, true),
  ]).toEqual([1, 2, 1, 0]);
});
