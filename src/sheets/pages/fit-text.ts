import { breakLines } from './break-lines';
import type { TextStyle } from './page-style';
import { linesHeightMm } from './write-text';

export interface FittedText {
  readonly lines: readonly string[];
  readonly style: TextStyle;
}

/** From one size of letters to the next smaller one. */
const shrinkShare = 0.9;

/** A text in lines that go into a place of this size, in smaller letters where they must be: no text is cut. */
export function fitText(text: string, style: TextStyle, widthMm: number, heightMm: number): FittedText {
  for (let fitted = style; ; fitted = { ...fitted, sizeMm: fitted.sizeMm * shrinkShare }) {
    const lines = breakLines(text, fitted.face, fitted.sizeMm, widthMm);
    // No sign is wider than half again the em: where one of them is higher than the place, it is the place that is wrong.
    const isNarrow = fitted.sizeMm * widestSign <= widthMm;
    if (isNarrow && linesHeightMm(fitted, lines.length) <= heightMm) return { lines, style: fitted };
  }
}

/** Widest advance of a sign in the faces, as a share of the em; generously. */
const widestSign = 1.5;
