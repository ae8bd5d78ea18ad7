import { expect, test } from 'vitest';
import { materialLine } from '../../../src/calc/materials/material-line';
import type { NeededItem } from '../../../src/calc/materials/needed-item';

const item: NeededItem = {
  itemId: 'p',
  group: 'panels',
  name: 'Panel',
  needed: 100,
  massKgEach: 8,
  priceEach: 50,
  leadDays: null,
  countedAs: '',
};
const materials = { spareShare: 0.03, spareLeast: 1, byItem: [] };
const line = (owned: number | null, obtainable: number | null = null, price: number | null = 50) =>
  materialLine({ ...item, priceEach: price }, materials, [{ itemId: 'p', owned, obtainable }]);

test('materialLine: to get = needed + spare - owned, never below nothing; price of what is to be got, mass of all', () => {
  expect(line(60, 30)).toMatchObject({ spare: 3, owned: 60, obtainable: 30, toGet: 43, price: 2150, massKg: 824 });
  expect(line(500)).toMatchObject({ toGet: 0, price: 0, massKg: 824 });
});

test('materialLine: not stated is none owned, and stays not stated', () => {
  expect(materialLine(item, materials, [])).toMatchObject({ owned: null, obtainable: null, toGet: 103 });
  expect(line(null)).toMatchObject({ owned: null, toGet: 103 });
});

test('materialLine without a price says so', () => {
  expect(line(0, 0, null).price).toBeNull();
});
