import { expect, test } from 'vitest';
import { createRandomBits } from '../../../../src/calc/runs/search/random-bits';

/** The recurrence of the paper in whole numbers of any size, cut to 32 bits at every shift. */
function byBigInt(seed: bigint, count: number): number[] {
  const word = 2n ** 32n;
  let state = seed;
  return Array.from({ length: count }, () => {
    state ^= (state << 13n) % word;
    state ^= state >> 17n;
    state ^= (state << 5n) % word;
    return Number(state);
  });
}

test('createRandomBits follows the recurrence with shifts 13, 17, 5 (Marsaglia 2003)', () => {
  const bits = createRandomBits(2463534242);
  expect(Array.from({ length: 1000 }, bits)).toEqual(byBigInt(2463534242n, 1000));
});

test('createRandomBits has a state of its own, and never sticks at 0', () => {
  const [one, other] = [createRandomBits(7), createRandomBits(7)];
  one();
  one();
  const first = createRandomBits(7)();
  expect(other()).toBe(first);
  expect(createRandomBits(0)()).toBe(createRandomBits(1)());
});
