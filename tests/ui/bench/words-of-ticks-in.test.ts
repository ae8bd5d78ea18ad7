import { expect, test } from 'vitest';
import { wordsOfTicksIn } from '../../../src/ui/bench/words-of-ticks-in';

test.each([
  [0, 0, 'There are no ticks in it.'],
  [1, 0, '1 tick came in; it was here already.'],
  [9, 0, '9 ticks came in; all of them were here already.'],
  [12, 8, '12 ticks came in, 8 of them new.'],
  [12, 12, '12 ticks came in, all of them new.'],
])('wordsOfTicksIn of %i with %i new', (count, news, words) => {
  expect(wordsOfTicksIn(count, news)).toBe(words);
});
