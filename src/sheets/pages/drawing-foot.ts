import type { Plan } from '../../plan/plan';
import type { Box, Drawing } from '../drawing';
import type { Format } from '../format';
import { LineBuilder } from '../line-builder';
import { paintColour } from '../paint-colour';
import { breakLines } from './break-lines';
import type { PageItem } from './page';
import { pageStyle } from './page-style';
import type { Inks } from './place-drawing';
import { ruleBoxes } from './rule-lines';
import { scaleBarHeightMm, scaleBarItems } from './scale-bar-items';
import { linesHeightMm, writeLines } from './write-text';

export interface DrawingFoot {
  readonly heightMm: number;
  readonly place: (leftMm: number, topMm: number) => readonly PageItem[];
}

export interface FootOptions {
  readonly paperName: string;
  readonly lengths: Plan['lengths'];
  readonly format: Format;
  readonly inks: Inks;
}

/** Longest bar, with the gap to what is said beside it. */
const barRoomMm = 68;
const swatchMm = 4;
const airMm = 1.5;

/** Under a drawing: its scale bar, its scale and notes in words, and what its tints stand for. */
export function drawingFoot(
  { notes, legend }: Pick<Drawing, 'notes' | 'legend'>,
  reduction: number,
  widthMm: number,
  { paperName, lengths, format, inks }: FootOptions,
): DrawingFoot {
  const { foot } = pageStyle.texts;
  const words = [`1:${reduction} on ${paperName}, where it is printed at its actual size`, ...notes].join('; ');
  const lines = breakLines(`${words}.`, foot.face, foot.sizeMm, widthMm - barRoomMm);
  const textMm = linesHeightMm(foot, lines.length);
  const entries = inks === 'black' ? [] : legend;
  const columns = Math.max(1, Math.floor(widthMm / 60));
  const cellMm = widthMm / columns;
  const keys = entries.map(({ tint, text }) => ({
    tint,
    lines: breakLines(text, foot.face, foot.sizeMm, cellMm - swatchMm - 4),
  }));
  const keyMm = linesHeightMm(foot, Math.max(0, ...keys.map((key) => key.lines.length))) + 0.8;
  const barTextMm = Math.max(scaleBarHeightMm, textMm);
  const keysMm = Math.ceil(keys.length / columns) * keyMm;
  return {
    heightMm: airMm + barTextMm + (keys.length === 0 ? 0 : keysMm + 1),
    place: (leftMm, topMm) => [
      ...scaleBarItems(leftMm, topMm + airMm + barTextMm - scaleBarHeightMm, reduction, lengths, format),
      ...writeLines(lines, leftMm + barRoomMm, topMm + airMm + barTextMm - textMm, foot),
      ...keys.flatMap((key, i) => {
        const x = leftMm + (i % columns) * cellMm;
        const y = topMm + airMm + barTextMm + 1 + Math.floor(i / columns) * keyMm;
        const swatch: Box = { leftMm: x, topMm: y + 0.2, rightMm: x + swatchMm, bottomMm: y + 2.7 };
        const shape = new LineBuilder().rectangle(swatch.leftMm, swatch.topMm, swatch.rightMm, swatch.bottomMm);
        return [
          { kind: 'path', lines: shape.build(true), fill: paintColour(key.tint), stroke: null } as const,
          ruleBoxes([swatch], pageStyle.strokes.row),
          ...writeLines(key.lines, x + swatchMm + 1.2, y, foot),
        ];
      }),
    ],
  };
}
