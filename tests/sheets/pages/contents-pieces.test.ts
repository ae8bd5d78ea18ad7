import { expect, test } from 'vitest';
import { contentsPieces } from '../../../src/sheets/pages/contents-pieces';
import { outside, textsOf } from './page-boxes';
import { placed } from './placed';

const entries = [
  { title: 'Cover', isPart: true, number: 1 },
  { title: 'Zones', isPart: true, number: 2 },
  { title: 'Zone of processor 1, '.repeat(12), isPart: false, number: 2 },
];

test('contentsPieces lists titles with their numbers', () => {
  const { items, heightMm } = placed(contentsPieces(entries, 90));
  const texts = textsOf(items);
  expect(texts[0]).toBe('Contents');
  expect(texts.filter((text) => /^\d+$/.test(text))).toEqual(['1', '2', '2']);
  expect(outside(items, { leftMm: 0, topMm: 0, rightMm: 90, bottomMm: heightMm })).toEqual([]);
});

test('contentsPieces needs the same room before the numbers are known', () => {
  const unnumbered = entries.map((entry) => ({ ...entry, number: null }));
  expect(placed(contentsPieces(unnumbered, 90)).heightMm).toBe(placed(contentsPieces(entries, 90)).heightMm);
  expect(textsOf(placed(contentsPieces(unnumbered, 90)).items)).not.toContain('1');
});
