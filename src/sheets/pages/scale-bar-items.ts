import type { Plan } from '../../plan/plan';
import type { Format } from '../format';
import { LineBuilder } from '../line-builder';
import { scaleBarMm } from '../scale-bar';
import type { PageItem } from './page';
import { pageStyle } from './page-style';
import { printableText } from './printable-text';
import { linesHeightMm, writeText } from './write-text';

/** Longest bar on paper. */
const mostMm = 62;
const barMm = 1.6;

/** Height of the bar with its figures. */
export const scaleBarHeightMm = barMm + linesHeightMm(pageStyle.texts.scale, 1) + 0.4;

/** Scale bar of a drawing at 1 : `reduction`, in fields that are filled by turns: it measures true on the paper. */
export function scaleBarItems(
  leftMm: number,
  topMm: number,
  reduction: number,
  lengths: Plan['lengths'],
  format: Format,
): readonly PageItem[] {
  const { scale } = pageStyle.texts;
  const realMm = scaleBarMm(1 / reduction, mostMm, lengths);
  const widthMm = realMm / reduction;
  const fields = fieldsOf(realMm, lengths);
  const y = topMm + linesHeightMm(scale, 1) + 0.4;
  const filled = new LineBuilder();
  for (let field = 0; field < fields; field += 2) {
    filled.rectangle(leftMm + (field * widthMm) / fields, y, leftMm + ((field + 1) * widthMm) / fields, y + barMm);
  }
  const outline = new LineBuilder().rectangle(leftMm, y, leftMm + widthMm, y + barMm);
  return [
    { kind: 'path', lines: filled.build(true), fill: scale.colour, stroke: null },
    { kind: 'path', lines: outline.build(true), fill: null, stroke: pageStyle.strokes.box },
    writeText('0', leftMm, topMm, scale),
    writeText(printableText(format(realMm, 'mm'), scale.face), leftMm + widthMm, topMm, scale, 'end'),
  ];
}

/** A bar of 2 has four fields, one of 1 or 5 has five; in feet one field a foot, or five. */
function fieldsOf(realMm: number, lengths: Plan['lengths']): number {
  if (lengths === 'feet') return 5;
  return String(Math.round(realMm))[0] === '2' ? 4 : 5;
}
