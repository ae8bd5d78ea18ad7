import { faceWidths } from './face-widths';
import type { PageFace } from './page';

/** Stands for a sign that the faces have not: scripts beyond Latin, Greek and Cyrillic, pictures. */
export const missingSign = '\u25ca';

/** Blanks that no line is broken at. */
const keepsTogether = /[\u00a0\u2007\u202f]/u;

/**
 * A text in signs of its face only, put together where letter and accent can be. White space is a blank, what shows
 * nothing (directions, joiners) is left out, and every other sign that the face has not becomes the missing sign.
 */
export function printableText(text: string, face: PageFace): string {
  const widths = faceWidths[face];
  let printable = '';
  for (const sign of text.normalize('NFC')) {
    const code = sign.codePointAt(0)!;
    const isThere = code < 0x10000 && widths[code]! > 0;
    if (/\s/u.test(sign)) printable += isThere && keepsTogether.test(sign) ? sign : ' ';
    else if (isThere) printable += sign;
    else if (!/[\p{Cc}\p{Cf}\p{Variation_Selector}]/u.test(sign)) printable += missingSign;
  }
  return printable;
}
