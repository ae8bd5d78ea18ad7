import { expect, it } from 'vitest';
import { scheduleMaterials } from '../../src/sheets/schedule-materials';
import { cells } from './cells';

const line = {
  itemId: 'p',
  group: 'panels',
  name: 'Panel 500',
  needed: 100,
  spare: 3,
  owned: null,
  toGet: 103,
  obtainable: null,
  massKgEach: 8,
  massKg: 824,
  priceEach: null,
  price: null,
  leadDays: 45,
  countedAs: 'panels of all surfaces',
} as const;
const schedule = scheduleMaterials({ lines: [line], massKg: 824, priceTotal: 0, priceToGet: 0, unpriced: 1 });

it('scheduleMaterials says "not stated" where nobody stated a figure, never nothing or zero', () => {
  expect(cells(schedule, 0)).toMatchObject({
    item: 'Panel 500',
    needed: 100,
    spare: 3,
    toGet: 103,
    mass: 824,
    owned: 'not stated',
    obtainable: 'not stated',
    priceEach: 'not stated',
    price: 'not stated',
    leadDays: 45,
  });
});

it('scheduleMaterials says "not stated" for a lead time that nobody stated', () => {
  const bill = { lines: [{ ...line, leadDays: null }], massKg: 824, priceTotal: 0, priceToGet: 0, unpriced: 1 };
  expect(cells(scheduleMaterials(bill), 0)).toMatchObject({ leadDays: 'not stated' });
});

it('scheduleMaterials sums masses and what is to be paid', () => {
  expect(cells(schedule, 'totals')).toMatchObject({ group: 'All', mass: 824, price: 0, needed: null });
  expect(schedule.panelOf(0)).toBeNull();
});
