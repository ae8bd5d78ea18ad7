import { wholeMicrometres } from '../whole-micrometres';
import { capHeight } from './face-widths';
import type { PageText } from './page';
import { pageStyle, type TextStyle } from './page-style';

/** Height of so many lines of a text. */
export function linesHeightMm({ sizeMm }: TextStyle, lines: number): number {
  return lines * sizeMm * pageStyle.lineShare;
}

/** From the top of a line down to where its letters stand: capitals are in the middle of it. */
export function baselineMm({ sizeMm }: TextStyle): number {
  return (sizeMm * (pageStyle.lineShare + capHeight)) / 2;
}

/** A printable line of text whose capitals stand in the middle of the line that begins at topMm. */
export function writeText(
  text: string,
  xMm: number,
  topMm: number,
  style: TextStyle,
  align: PageText['align'] = 'start',
): PageText {
  const { face, sizeMm, colour } = style;
  return {
    kind: 'text',
    text,
    xMm: wholeMicrometres(xMm),
    yMm: wholeMicrometres(topMm + baselineMm(style)),
    sizeMm: wholeMicrometres(sizeMm),
    face,
    align,
    turned: false,
    colour,
    rim: false,
  };
}

/** Printable lines, one under the other. */
export function writeLines(
  lines: readonly string[],
  xMm: number,
  topMm: number,
  style: TextStyle,
  align: PageText['align'] = 'start',
): readonly PageText[] {
  return lines.map((line, i) => writeText(line, xMm, topMm + linesHeightMm(style, i), style, align));
}
