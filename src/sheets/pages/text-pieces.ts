import type { TextBlock } from '../crew-set/crew-part';
import { breakLines } from './break-lines';
import { cautionMark } from './caution-mark';
import { pageStyle, type TextStyle } from './page-style';
import type { Piece } from './piece';
import { ruleLines } from './rule-lines';
import { linesHeightMm, writeText } from './write-text';

/** Longest line that the eye finds back from. */
const readableMm = 165;
/** Lines of a caution begin so far in; its mark stands before them. */
const insetMm = 7.5;
const markMm = 4.4;
/** A text of so few lines stays together. */
const togetherLines = 8;

const spaces: Readonly<Record<TextBlock['style'], number>> = { title: 0, lead: 1.5, body: 3, caution: 3 };

/** A text, a piece for each of its lines. */
export function textPieces({ style: kind, text }: TextBlock, widthMm: number): readonly Piece[] {
  const style: TextStyle = pageStyle.texts[kind];
  const isCaution = kind === 'caution';
  const inset = isCaution ? insetMm : 0;
  const lines = breakLines(text, style.face, style.sizeMm, Math.min(readableMm, widthMm) - inset);
  const lineMm = linesHeightMm(style, 1);
  return lines.map((line, i) => ({
    heightMm: lineMm,
    spaceMm: i === 0 ? spaces[kind] : 0,
    withNext: i + 1 < lines.length ? lines.length <= togetherLines : kind === 'title',
    head: null,
    place: (leftMm, topMm) => [
      ...(isCaution && i === 0 ? cautionMark(leftMm, topMm - 0.3, markMm) : []),
      ...(isCaution ? [ruleLines([[leftMm + 5.9, topMm, leftMm + 5.9, topMm + lineMm]], pageStyle.strokes.head)] : []),
      writeText(line, leftMm + inset, topMm, style),
    ],
  }));
}
