import { expect, test } from 'vitest';
import { askedOpening } from '../../../src/calc/finder/asked-opening';
import { defaultWish } from '../../../src/plan/wish';

const asked = (openingMm: number | null, widthMm: number | null) =>
  askedOpening({ wall: { ...defaultWish.wall, openingMm }, vehicle: { widthMm, heightMm: null } });

test('askedOpening is the wish, else what must drive in, else none', () => {
  expect(asked(4000, 2600)).toEqual({ openingMm: 4000, from: 'wish' });
  expect(asked(0, 2600)).toEqual({ openingMm: 0, from: 'wish' });
  expect(asked(null, 2600)).toEqual({ openingMm: 2600, from: 'vehicle' });
  expect(asked(null, null)).toEqual({ openingMm: 0, from: 'closed' });
});
