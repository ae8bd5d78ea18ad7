import { expect, test } from 'vitest';
import { figurePieces } from '../../../src/sheets/pages/figure-pieces';
import { outside, textsOf } from './page-boxes';
import { placed } from './placed';

const entries = Array.from({ length: 7 }, (_, i) => ({ name: `Name ${i}`, value: `${i} kW` }));

test('figurePieces shows every figure with its name, a row a piece', () => {
  const pieces = figurePieces({ kind: 'figures', entries }, 180);
  const { items, heightMm } = placed(pieces);
  for (const { name, value } of entries) expect(textsOf(items)).toEqual(expect.arrayContaining([name, value]));
  expect(pieces.length).toBeLessThan(entries.length);
  expect(outside(items, { leftMm: 0, topMm: -0.2, rightMm: 180, bottomMm: heightMm })).toEqual([]);
});

test('figurePieces breaks long values and names within their cells', () => {
  const long = [{ name: 'panels of a port, from least to most', value: '1,234,567 panels (least 1,234,560)' }];
  const { items, heightMm } = placed(figurePieces({ kind: 'figures', entries: [...long, ...entries] }, 90));
  expect(outside(items, { leftMm: 0, topMm: -0.2, rightMm: 90, bottomMm: heightMm })).toEqual([]);
});

test('figurePieces of nothing is nothing', () => {
  expect(figurePieces({ kind: 'figures', entries: [] }, 90)).toEqual([]);
});
