import { create, type Font } from '@cantoo/fontkit';
import { expect, test } from 'vitest';
import { capHeight, faceWidths } from '../../../src/sheets/pages/face-widths';
import { printFonts } from './print-fonts';

const left = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Cn}\p{Mn}\p{Me}\p{Zl}\p{Zp}]/u;

test.each(['sans', 'strong', 'mono'] as const)('the widths of %s are those of the file that is embedded', (face) => {
  const font = create(printFonts[face]) as Font;
  expect([font.unitsPerEm, font.capHeight]).toEqual([1000, capHeight * 1000]);
  const wrong: string[] = [];
  const known = new Set(font.characterSet.filter((code) => !left.test(String.fromCodePoint(code))));
  for (let code = 0; code < 0x10000; code++) {
    const expected = known.has(code) ? font.glyphForCodePoint(code)!.advanceWidth : 0;
    if (faceWidths[face][code] !== expected) wrong.push(code.toString(16));
  }
  expect(wrong).toEqual([]);
  expect(known.size).toBeGreaterThan(850);
});
