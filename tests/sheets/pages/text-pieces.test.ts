import { expect, test } from 'vitest';
import { textPieces } from '../../../src/sheets/pages/text-pieces';
import { outside, textsOf } from './page-boxes';
import { placed } from './placed';

const text = 'Nobody stands under a ceiling that moves. A competent person decides on limits and supervision.';

test.each(['title', 'lead', 'body', 'caution'] as const)(
  'textPieces writes a %s whole and within its width',
  (style) => {
    const { items, heightMm } = placed(textPieces({ kind: 'text', style, text }, 80));
    expect(textsOf(items).join(' ')).toBe(text);
    expect(outside(items, { leftMm: -0.2, topMm: -1, rightMm: 80, bottomMm: heightMm })).toEqual([]);
  },
);

test('textPieces marks a caution with a triangle, once, and keeps its lines together', () => {
  const pieces = textPieces({ kind: 'text', style: 'caution', text }, 80);
  expect(pieces.length).toBeGreaterThan(1);
  const filled = placed(pieces).items.filter((item) => item.kind === 'path' && item.fill !== null);
  expect(filled).toHaveLength(1);
  expect(pieces.map(({ withNext }) => withNext)).toEqual(pieces.map((_, i) => i + 1 < pieces.length));
});

test('textPieces lets a long text run on over pages, a line a piece, and no line is longer than the eye follows', () => {
  const pieces = textPieces({ kind: 'text', style: 'body', text: `${text} `.repeat(20) }, 380);
  expect(pieces.some(({ withNext }) => withNext)).toBe(false);
  expect(outside(placed(pieces).items, { leftMm: 0, topMm: -1, rightMm: 165, bottomMm: 1000 })).toEqual([]);
});
