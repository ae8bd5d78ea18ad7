import { expect, test } from 'vitest';
import type { MaterialLine } from '../../src/calc/materials/material-result';
import { materialsReport } from '../../src/cli/materials-report';

const options = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;
const line: MaterialLine = {
  itemId: 'p',
  group: 'panels',
  name: 'Panel 500',
  needed: 120,
  spare: 4,
  owned: null,
  toGet: 124,
  obtainable: null,
  massKgEach: 8,
  massKg: 992,
  priceEach: 2000,
  price: 248_000,
  leadDays: 45,
  countedAs: 'panels of all surfaces',
};
const results = (lines: MaterialLine[], unpriced = 0) => ({
  lines,
  massKg: 992,
  priceTotal: 300_000,
  priceToGet: 248_000,
  unpriced,
});

test('materialsReport lists needed, spare, owned, to get, mass and price of each item, and the sums', () => {
  const text = materialsReport({ name: 'Small stage', revision: 'B' }, results([line]), options, 80);
  expect(text).toMatch(/^Bill of materials: Small stage, revision B\n/);
  expect(text).toMatch(/\nPanel 500 +120 +4 +\? +124 +992 kg +€248,000\n/);
  expect(text).toContain('Mass of all: 992 kg');
  expect(text).toContain('Price of what is to be got: €248,000; of everything bought new: €300,000');
  expect(text).not.toContain('without a price');
});

test('materialsReport marks what is not stated and says how many lines the sums leave out', () => {
  const text = materialsReport({ name: 'x', revision: '' }, results([{ ...line, price: null }], 1), options, 80);
  expect(text).toMatch(/Panel 500 .* \?\n/);
  expect(text).toContain('Lines without a price, which the sums leave out: 1');
});

test('materialsReport fits eighty columns, whatever an item is called', () => {
  const text = materialsReport({ name: 'x', revision: '' }, results([{ ...line, name: 'N'.repeat(200) }]), options, 80);
  for (const each of text.split('\n')) expect(each.length).toBeLessThanOrEqual(80);
  expect(text).toContain('N…');
});

test('materialsReport ends with the caution: what it lists is hung, stacked and fed', () => {
  const text = materialsReport({ name: 'Small stage', revision: '' }, results([line]), options, 80);
  expect(text.trimEnd().replace(/\s+/g, ' ')).toMatch(/licensed electrician.*structural engineer decide\.$/);
});
