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
const numberMm = 9;
const gapMm = 10;
/** From this width on the contents stand in two columns: the first half of the lines on the left. */
const twoColumnsMm = 150;
const widestMm = 110;
const airMm = 0.5;

/** Titles with the number of their first sheet, a piece a line. Numbers that are not known yet take the same room. */
export function contentsPieces(entries: readonly ContentsEntry[], roomMm: number): readonly Piece[] {
  const { tableTitle } = pageStyle.texts;
  const head: Piece = {
    heightMm: linesHeightMm(tableTitle, 1) + 0.8,
    spaceMm: pageStyle.blockGapMm,
    withNext: true,
    head: null,
    place: (leftMm, topMm) => [writeText('Contents', leftMm, topMm, tableTitle)],
  };
  const columns = roomMm >= twoColumnsMm ? 2 : 1;
  const widthMm = Math.min(widestMm, (roomMm - (columns - 1) * gapMm) / columns);
  const lines = entries.map((entry) => layOut(entry, widthMm));
  const rows = Math.ceil(lines.length / columns);
  const pieces = Array.from({ length: rows }, (_, row): Piece => {
    const here = lines.filter((_line, i) => i % rows === row);
    return {
      heightMm: Math.max(...here.map(({ heightMm }) => heightMm)),
      spaceMm: 0,
      // Read down one column and then the other: on one page where one page holds them.
      withNext: row + 1 < rows,
      head: null,
      place: (leftMm, topMm) => here.flatMap((line, i) => line.place(leftMm + i * (widthMm + gapMm), topMm)),
    };
  });
  return [head, ...pieces];
}

/** One line, with dots from its title to its number. */
function layOut({ title, isPart, number }: ContentsEntry, widthMm: number): Pick<Piece, 'heightMm' | 'place'> {
  const { words, total } = pageStyle.texts;
  const style: TextStyle = isPart ? total : words;
  const indent = isPart ? 0 : indentMm;
  const broken = breakLines(title, style.face, style.sizeMm, widthMm - indent - numberMm);
  const lastLineMm = linesHeightMm(style, broken.length - 1);
  return {
    heightMm: linesHeightMm(style, broken.length) + airMm,
    place(leftMm, topMm) {
      const lastMm = topMm + lastLineMm;
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
}
