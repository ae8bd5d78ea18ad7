import { expect, test } from 'vitest';
import { neededItem } from '../../../src/calc/materials/needed-item';
import { gearItem } from '../../arbitraries/materials-inputs';

test('neededItem takes name, mass, price and lead time from the catalogue', () => {
  expect(neededItem([gearItem('a', 70)], { itemId: 'a', count: 3 }, 'signal', 'one a zone')).toEqual({
    itemId: 'a',
    group: 'signal',
    name: 'Item a',
    needed: 3,
    massKgEach: 5,
    priceEach: 70,
    leadDays: 10,
    countedAs: 'one a zone',
  });
});

test('neededItem of an id that leads nowhere is named by it, without mass and price', () => {
  expect(neededItem([], { itemId: 'gone', count: 1 }, 'signal', '')).toMatchObject({
    name: 'gone',
    massKgEach: 0,
    priceEach: null,
    leadDays: null,
  });
});
