import type { Box } from '../drawing';
import { breakLines } from './break-lines';
import type { PageItem } from './page';
import { pageStyle } from './page-style';
import { ruleLines } from './rule-lines';
import { textWidthMm } from './text-width';
import { linesHeightMm, writeLines } from './write-text';

export interface Heading {
  readonly items: readonly PageItem[];
  /** Where the page goes on under it. */
  readonly bottomMm: number;
}

const gapMm = 6;
const airMm = 2.5;

/** Title of a sheet at the head of a page, and on its right the side that it is drawn from. */
export function heading(title: string, side: string | null, { leftMm, topMm, rightMm }: Box): Heading {
  const { heading: style, aside } = pageStyle.texts;
  const width = rightMm - leftMm;
  const sideLines = side === null ? [] : breakLines(side, aside.face, aside.sizeMm, width / 3);
  const sideMm = Math.max(0, ...sideLines.map((line) => textWidthMm(line, aside.face, aside.sizeMm)));
  const lines = breakLines(title, style.face, style.sizeMm, width - (sideMm === 0 ? 0 : sideMm + gapMm));
  const heightMm = Math.max(linesHeightMm(style, lines.length), linesHeightMm(aside, sideLines.length));
  const y = topMm + heightMm + 0.6;
  return {
    items: [
      ...writeLines(lines, leftMm, topMm, style),
      // Both end on the same line.
      ...writeLines(sideLines, rightMm, topMm + heightMm - linesHeightMm(aside, sideLines.length) - 0.3, aside, 'end'),
      ruleLines([[leftMm, y, rightMm, y]], pageStyle.strokes.head),
    ],
    bottomMm: y + airMm,
  };
}
