import { expect, test } from 'vitest';
import { mapLines } from '../../../src/sheets/map-lines';
import { codePieces } from '../../../src/sheets/pages/code-pieces';
import { quietModules } from '../../../src/sheets/qr-path';
import { readQr } from '../read-qr';
import { outside, textsOf } from './page-boxes';
import { placed } from './placed';

test.each([40, 400, 2300])(
  'a code for a link of %i signs is read back by an outside decoder, with its quiet zone',
  (signs) => {
    const url = `https://example.org/#p=${'a1B2'.repeat(signs / 4)}`;
    const { items, heightMm } = placed(codePieces({ kind: 'qr', url, caption: 'Scan to open the plan.' }, 180), 20);
    const link = items.find((item) => item.kind === 'link')!;
    const path = items.find((item) => item.kind === 'path')!;
    expect(link.url).toBe(url);
    const side = link.box.rightMm - link.box.leftMm;
    // The code's own corner squares touch its edges: what is left of the box is the quiet zone, 4 modules (ISO/IEC 18004).
    const least = Math.min(...path.lines.xyMm.filter((_, i) => i % 2 === 0)) - link.box.leftMm;
    const module = least / quietModules;
    expect(module).toBeGreaterThanOrEqual(0.39);
    const modules = Math.round(side / module) - 2 * quietModules;
    const unit = mapLines(path.lines, (x, y) => [
      (x - link.box.leftMm) / module - quietModules,
      (y - link.box.topMm) / module - quietModules,
    ]);
    expect(readQr(unit, modules)).toBe(url);
    expect(outside(items, { leftMm: 20, topMm: 0, rightMm: 200, bottomMm: heightMm })).toEqual([]);
  },
);

test('the caption stands under a code that leaves no room beside it', () => {
  const { items, heightMm } = placed(codePieces({ kind: 'qr', url: 'x'.repeat(2900), caption: 'Scan to open.' }, 84));
  expect(textsOf(items).join(' ')).toBe('Scan to open.');
  expect(outside(items, { leftMm: 0, topMm: 0, rightMm: 84, bottomMm: heightMm })).toEqual([]);
});

test('a link that no code holds is written out', () => {
  const url = 'y'.repeat(4000);
  const { items } = placed(codePieces({ kind: 'qr', url, caption: 'Open:' }, 180));
  expect(items.every(({ kind }) => kind === 'text')).toBe(true);
  expect(textsOf(items).join('').replaceAll(' ', '')).toBe(`Open:${url}`);
});
