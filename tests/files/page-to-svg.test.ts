import { expect, test } from 'vitest';
import { pageToSvg } from '../../src/files/page-to-svg';
import type { Page, PageItem, PageText } from '../../src/sheets/pages/page';
import { readSvg } from './read-svg';

const a4 = (items: readonly PageItem[], title = 'Sheet'): Page => ({
  widthMm: 297,
  heightMm: 210,
  title,
  partId: 'cover',
  items,
});

const text: PageText = {
  kind: 'text',
  text: 'A C1 R1',
  xMm: 10,
  yMm: 20.00049,
  sizeMm: 2.5,
  face: 'mono',
  align: 'start',
  turned: false,
  colour: '#000000',
  rim: false,
};

test('pageToSvg is as large as the page and has a unit a millimetre', () => {
  const [svg, title] = readSvg(pageToSvg(a4([], 'Bill & <more>')));
  expect(svg!.attributes).toMatchObject({ width: '297mm', height: '210mm', viewBox: '0 0 297 210' });
  expect(title!.text).toBe('Bill & <more>');
});

test('pageToSvg writes lines with their width and dashes, and fills without a line', () => {
  const lines = { xyMm: Float64Array.of(1, 1, 2, 1, 2, 2), ends: Uint32Array.of(3), closed: true };
  const stroke = { colour: '#112233', widthMm: 0.35, dashesMm: [3, 2] };
  const paths = readSvg(
    pageToSvg(
      a4([
        { kind: 'path', lines, fill: null, stroke },
        { kind: 'path', lines, fill: '#445566', stroke: null },
      ]),
    ),
  ).filter(({ name }) => name === 'path');
  expect(paths.map(({ attributes }) => attributes)).toEqual([
    { fill: 'none', stroke: '#112233', 'stroke-width': '0.35', 'stroke-dasharray': '3 2', d: 'M1 1L2 1L2 2Z' },
    { fill: '#445566', d: 'M1 1L2 1L2 2Z' },
  ]);
});

test('pageToSvg stands texts on their baseline, turns them upwards and rims them', () => {
  const found = readSvg(
    pageToSvg(
      a4([
        text,
        { ...text, text: '<b> & "c"', face: 'strong', align: 'end', turned: true },
        { ...text, face: 'sans', align: 'middle', rim: true },
      ]),
    ),
  ).filter(({ name }) => name === 'text');
  expect(found.map((each) => each.text)).toEqual(['A C1 R1', '<b> & "c"', 'A C1 R1']);
  const [plain, turned, rimmed] = found.map(({ attributes }) => attributes);
  expect(plain).toMatchObject({ x: '10', y: '20', 'font-size': '2.5', 'font-family': "'IBM Plex Mono', monospace" });
  expect(plain!.transform).toBeUndefined();
  expect(turned).toMatchObject({
    transform: 'rotate(-90 10 20)',
    'text-anchor': 'end',
    'font-weight': '600',
    'font-family': "'IBM Plex Sans', sans-serif",
  });
  expect(rimmed).toMatchObject({ 'paint-order': 'stroke', stroke: '#ffffff', 'text-anchor': 'middle' });
  expect(plain!.stroke).toBeUndefined();
});

test('pageToSvg lays a link over its place', () => {
  const box = { leftMm: 10, topMm: 20, rightMm: 40, bottomMm: 50 };
  const elements = readSvg(pageToSvg(a4([{ kind: 'link', box, url: 'https://example.org/?a=1&b=2#x' }])));
  const link = elements.findIndex(({ name }) => name === 'a');
  expect(elements[link]!.attributes.href).toBe('https://example.org/?a=1&b=2#x');
  expect(elements[link + 1]!.attributes).toMatchObject({ x: '10', y: '20', width: '30', height: '30', fill: 'none' });
});
