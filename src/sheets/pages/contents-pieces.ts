import { breakLines } from './break-lines';
import { pageStyle, type TextStyle } from './page-style';
import type { Piece } from './piece';
import { ruleLines } from './rule-lines';
import { textWidthMm } from './text-width';
import { linesHeightMm, writeLines, writeText } from './write-text';

/** A line of the contents: a part, or one of several sheets in it. */
export interface ContentsEntry {
  readonly title: string;
  readonly isPart: boolean;
  /** Of its first sheet; null while that is not known. */
  readonly number: number | null;
}

const indentMm = 5;
const numberMm = 12;
const readableMm = 130;

/** Titles with the number of their first sheet; a piece each. Numbers that are not known yet take the same room. */
export function contentsPieces(entries: readonly ContentsEntry[], roomMm: number): readonly Piece[] {
  const widthMm = Math.min(roomMm, readableMm);
  const { tableTitle, words, cellStrong } = pageStyle.texts;
  const head: Piece = {
    heightMm: linesHeightMm(tableTitle, 1) + 0.8,
    spaceMm: pageStyle.blockGapMm,
    withNext: true,
    head: null,
    place: (leftMm, topMm) => [writeText('Contents', leftMm, topMm, tableTitle)],
  };
  const lines = entries.map(({ title, isPart, number }): Piece => {
    const style: TextStyle = isPart ? { ...cellStrong, sizeMm: words.sizeMm } : words;
    const indent = isPart ? 0 : indentMm;
    const broken = breakLines(title, style.face, style.sizeMm, widthMm - indent - numberMm);
    const heightMm = linesHeightMm(style, broken.length);
    return {
      heightMm,
      spaceMm: isPart ? 0.9 : 0,
      withNext: false,
      head: null,
      place(leftMm, topMm) {
        const lastMm = topMm + linesHeightMm(style, broken.length - 1);
        const from = leftMm + indent + textWidthMm(broken.at(-1)!, style.face, style.sizeMm) + 1.5;
        const until = leftMm + widthMm - numberMm + 2;
        const y = lastMm + style.sizeMm;
        return [
          ...writeLines(broken, leftMm + indent, topMm, style),
          ...(until > from ? [ruleLines([[from, y, until, y]], pageStyle.strokes.leader)] : []),
          ...(number === null ? [] : [writeText(String(number), leftMm + widthMm, lastMm, words, 'end')]),
        ];
      },
    };
  });
  return [head, ...lines];
}
