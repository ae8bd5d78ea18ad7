import { expect, test } from 'vitest';
import { pageToPdfContent } from '../../src/files/page-to-pdf-content';
import type { PdfFace } from '../../src/files/pdf-face';
import type { PageItem, PageText } from '../../src/sheets/pages/page';

/** Shows signs as they are; the rim of a blank is nothing. */
const face = {
  name: 'M',
  encode: (text: string) => `(${text})`,
  rims: (text: string) => [...text].map((sign) => (sign === ' ' ? null : sign)),
} as unknown as PdfFace;
const faces = { sans: face, strong: face, mono: face };
const contentOf = (...items: readonly PageItem[]) =>
  pageToPdfContent({ widthMm: 210, heightMm: 297, title: '', partId: 'cover', items }, faces).split('\n');
const text: PageText = {
  kind: 'text',
  text: 'A B',
  xMm: 100,
  yMm: 50,
  sizeMm: 10,
  face: 'mono',
  align: 'start',
  turned: false,
  colour: '#ff0000',
  rim: false,
};

test('pageToPdfContent turns millimetres, y down, into points, y up', () => {
  // ISO 32000-1: 72 units an inch, and an inch is 25.4 mm.
  expect(contentOf()[0]).toBe('2.834645669 0 0 -2.834645669 0 841.8898 cm');
});

test('pageToPdfContent paints fills, strokes with their dashes, and closed lines', () => {
  const lines = { xyMm: Float64Array.of(1, 2, 3, 2, 3, 4), ends: Uint32Array.of(3), closed: true };
  const stroke = { colour: '#00ff00', widthMm: 0.35, dashesMm: [3, 2] };
  const path = ['1 2 m', '3 2 l', '3 4 l', 'h'];
  expect(contentOf({ kind: 'path', lines, fill: '#808080', stroke: null }).slice(2)).toEqual([
    '0.502 0.502 0.502 rg',
    ...path,
    'f',
  ]);
  expect(contentOf({ kind: 'path', lines, fill: null, stroke }).slice(2)).toEqual([
    '0 1 0 RG 0.35 w [3 2] 0 d',
    ...path,
    'S',
  ]);
  expect(contentOf({ kind: 'path', lines, fill: '#ffffff', stroke }).at(-1)).toBe('B');
  expect(contentOf({ kind: 'path', lines: { ...lines, closed: false }, fill: null, stroke: null }).slice(-2)).toEqual([
    '3 4 l',
    'n',
  ]);
});

test('pageToPdfContent begins texts where their alignment asks, level or upwards', () => {
  const shown = (more: Partial<PageText>) => contentOf({ ...text, ...more }).at(-1);
  // Three signs of 6 mm.
  expect(shown({})).toBe('BT /M 10 Tf 1 0 0 rg 1 0 0 -1 100 50 Tm (A B) Tj ET');
  expect(shown({ align: 'middle' })).toContain('1 0 0 -1 91 50 Tm');
  expect(shown({ align: 'end' })).toContain('1 0 0 -1 82 50 Tm');
  expect(shown({ align: 'middle', turned: true })).toContain('0 -1 -1 0 100 59 Tm');
});

test('pageToPdfContent paints the rim of each sign before the text, along it', () => {
  const rims = (more: Partial<PageText>) => contentOf({ ...text, rim: true, ...more }).slice(2, -1);
  expect(rims({})).toEqual(['q 0.01 0 0 -0.01 100 50 cm /A Do Q', 'q 0.01 0 0 -0.01 112 50 cm /B Do Q']);
  expect(rims({ turned: true })).toEqual([
    'q 0 -0.01 -0.01 0 100 50 cm /A Do Q',
    'q 0 -0.01 -0.01 0 100 38 cm /B Do Q',
  ]);
});
