import type { FiguresBlock } from '../crew-set/crew-part';
import { breakLines } from './break-lines';
import { pageStyle } from './page-style';
import type { Piece } from './piece';
import { ruleLines } from './rule-lines';
import { linesHeightMm, writeLines } from './write-text';

const leastMm = 31;
const mostColumns = 6;
const gapMm = 4;
const padMm = 1.2;

/** Figures side by side, a piece for each row of them: the value large, its name under it. */
export function figurePieces({ entries }: FiguresBlock, widthMm: number): readonly Piece[] {
  const { value: valueStyle, head: nameStyle } = pageStyle.texts;
  const columns = Math.max(1, Math.min(mostColumns, Math.floor((widthMm + gapMm) / (leastMm + gapMm))));
  const cellMm = (widthMm - (columns - 1) * gapMm) / columns;
  const rows = Array.from({ length: Math.ceil(entries.length / columns) }, (_, row) =>
    entries.slice(row * columns, (row + 1) * columns).map(({ name, value }) => ({
      values: breakLines(value, valueStyle.face, valueStyle.sizeMm, cellMm),
      names: breakLines(name, nameStyle.face, nameStyle.sizeMm, cellMm),
    })),
  );
  return rows.map((cells, row) => {
    const valueMm = linesHeightMm(valueStyle, Math.max(...cells.map(({ values }) => values.length)));
    const nameMm = linesHeightMm(nameStyle, Math.max(...cells.map(({ names }) => names.length)));
    return {
      heightMm: valueMm + nameMm + 2 * padMm,
      spaceMm: row === 0 ? pageStyle.blockGapMm : 0.6,
      withNext: false,
      head: null,
      place: (leftMm, topMm) =>
        cells.flatMap(({ values, names }, i) => {
          const x = leftMm + i * (cellMm + gapMm);
          return [
            ruleLines([[x, topMm, x + cellMm, topMm]], pageStyle.strokes.cell),
            ...writeLines(values, x, topMm + padMm, valueStyle),
            ...writeLines(names, x, topMm + padMm + linesHeightMm(valueStyle, values.length), nameStyle),
          ];
        }),
    };
  });
}
