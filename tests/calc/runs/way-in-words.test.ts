import { expect, test } from 'vitest';
import { wayInWords } from '../../../src/calc/runs/way-in-words';
import type { WayOfWiring } from '../../../src/plan/hand-change';

const ways: WayOfWiring[] = [
  { kind: 'columns' },
  { kind: 'folded', wide: 3 },
  { kind: 'split', aboveRow: 2, wide: 1 },
  { kind: 'split', aboveRow: 2, wide: 4 },
  { kind: 'rows' },
  { kind: 'free' },
];

test.each(ways)('wayInWords of $kind has a value for every token and no digit of its own', (way) => {
  const { words, values } = wayInWords(way);
  for (const [, token] of words.matchAll(/\{(\w+)\}/g)) expect(values).toHaveProperty(token!);
  expect(words).not.toMatch(/\d/);
});

test('wayInWords names the row that a wiring splits above', () => {
  const { words, values } = wayInWords({ kind: 'split', aboveRow: 2, wide: 1 });
  expect(words).toBe('Splitting above row {row}');
  expect(values.row).toEqual({ value: 2, unit: 'count' });
});
