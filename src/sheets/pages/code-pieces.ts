import type { CodeBlock } from '../crew-set/crew-part';
import { mapLines } from '../map-lines';
import { qrPath, quietModules } from '../qr-path';
import { breakLines } from './break-lines';
import type { PageItem } from './page';
import { pageStyle } from './page-style';
import type { Piece } from './piece';
import { linesHeightMm, writeLines } from './write-text';

/** Side of a module: common practice, no source. Cameras of phones read 0.4 mm from a hand's distance. */
const moduleMm = { most: 0.9, least: 0.4 } as const;
const sideMm = 34;
const gapMm = 2;
const leastTextMm = 30;

/** A code to scan with what it leads to beside it; where no code holds the link, the link itself in letters. */
export function codePieces({ url, caption }: CodeBlock, widthMm: number): readonly Piece[] {
  const path = qrPath(url, 'M') ?? qrPath(url, 'L');
  const style = pageStyle.texts.body;
  if (path === null) {
    const lines = breakLines(`${caption} ${url}`, style.face, style.sizeMm, widthMm);
    return lines.map((line, i) => ({
      heightMm: linesHeightMm(style, 1),
      spaceMm: i === 0 ? pageStyle.blockGapMm : 0,
      withNext: false,
      head: null,
      place: (leftMm, topMm) => writeLines([line], leftMm, topMm, style),
    }));
  }
  const all = path.modules + 2 * quietModules;
  const module = Math.min(moduleMm.most, Math.max(moduleMm.least, sideMm / all));
  const codeMm = all * module;
  const isBeside = widthMm - codeMm - gapMm >= leastTextMm;
  const lines = breakLines(caption, style.face, style.sizeMm, isBeside ? widthMm - codeMm - gapMm : widthMm);
  const textMm = linesHeightMm(style, lines.length);
  return [
    {
      heightMm: isBeside ? Math.max(codeMm, textMm) : codeMm + textMm,
      spaceMm: pageStyle.blockGapMm,
      withNext: false,
      head: null,
      place(leftMm, topMm): readonly PageItem[] {
        const at = (modules: number) => (modules + quietModules) * module;
        const box = { leftMm, topMm, rightMm: leftMm + codeMm, bottomMm: topMm + codeMm };
        const placed = mapLines(path.lines, (x, y) => [leftMm + at(x), topMm + at(y)]);
        return [
          { kind: 'path', lines: placed, fill: '#000000', stroke: null },
          { kind: 'link', box, url },
          ...(isBeside
            ? writeLines(lines, leftMm + codeMm + gapMm, topMm + Math.max(0, codeMm - textMm) / 2, style)
            : writeLines(lines, leftMm, topMm + codeMm, style)),
        ];
      },
    },
  ];
}
