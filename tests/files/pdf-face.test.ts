import fontkit from '@cantoo/fontkit';
import { PDFDocument } from '@cantoo/pdf-lib';
import { expect, test } from 'vitest';
import { embedPdfFace } from '../../src/files/pdf-face';
import { printFonts } from '../sheets/pages/print-fonts';

async function face() {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.registerFontkit(fontkit);
  return embedPdfFace(document, 'M', printFonts.mono);
}

test('embedPdfFace gives each sign a code of two bytes, the same wherever it stands', async () => {
  const { encode } = await face();
  const once = encode('3B-04');
  expect(once).toMatch(/^<([0-9A-F]{4}){5}>$/i);
  expect(encode('4')).toBe(`<${once.slice(-5)}`);
  expect(encode('')).toBe('<>');
});

test('embedPdfFace joins no signs', async () => {
  const { encode } = await face();
  expect(encode('fi')).toBe(`${encode('f').slice(0, -1)}${encode('i').slice(1)}`);
});

test('embedPdfFace has a rim for each sign with an outline, one form a sign', async () => {
  const { rims, rimForms } = await face();
  const [first, blank, second] = rims('a a');
  expect([blank, second]).toEqual([null, first]);
  expect([...rimForms().keys()]).toEqual([first]);
  rims('ab');
  expect(rimForms().size).toBe(2);
});
