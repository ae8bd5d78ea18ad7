import { dimensionSegments } from '../dimension-segments';
import type { Box, Drawing, Fill, Lines, Pen, Stroke } from '../drawing';
import { type Lettering, letterDrawing } from '../letter-drawing';
import { LineBuilder } from '../line-builder';
import { mapLines } from '../map-lines';
import { paintColour } from '../paint-colour';
import { paperStyle } from '../paper-style';
import { wholeMicrometres } from '../whole-micrometres';
import { capHeight } from './face-widths';
import type { PageItem, PagePath, PageText } from './page';
import { printableText } from './printable-text';

/** Colour: pens and tints; black: what differs by colour differs by weight, dash or place too, and tints are left out. */
export type Inks = 'colour' | 'black';

/** Where on the paper a part of a drawing stands. */
export interface Placing {
  /** The part of the drawing that shows with its texts, in mm of the thing drawn. */
  readonly window: Box;
  /** Upper left corner of the window on the paper. */
  readonly leftMm: number;
  readonly topMm: number;
  readonly reduction: number;
  readonly inks: Inks;
}

/** A drawing on paper at 1 : `reduction`, lettered as far as its texts have room in the window. */
export function placeDrawing(drawing: Drawing, placing: Placing): readonly PageItem[] {
  const { window, leftMm, topMm, reduction, inks } = placing;
  const toPaper = (x: number, y: number) =>
    [leftMm + (x - window.leftMm) / reduction, topMm + (y - window.topMm) / reduction] as const;
  const onPaper = (lines: Lines) => mapLines(lines, toPaper);
  const pen = (name: Pen) => penColour(name, inks);
  const scale = paperStyle.pixelsAMm / reduction;
  const isShown = ({ leastScale, lines }: Fill | Stroke) => scale >= leastScale && lines.ends.length > 0;
  const fill = ({ paint, lines }: Fill): readonly PagePath[] => {
    if (typeof paint === 'number' && inks === 'black') return [];
    const colour = typeof paint === 'number' || paint === 'sheet' ? paintColour(paint) : pen(paint);
    return [{ kind: 'path', lines: onPaper(lines), fill: colour, stroke: null }];
  };
  return [
    ...drawing.fills.filter(isShown).flatMap(fill),
    ...drawing.strokes.filter(isShown).map(
      ({ pen: name, weight, dash, lines }): PagePath => ({
        kind: 'path',
        lines: onPaper(lines),
        fill: null,
        stroke: { colour: pen(name), widthMm: paperStyle.widthsMm[weight], dashesMm: paperStyle.dashesMm[dash] },
      }),
    ),
    ...drawing.marks.filter(isShown).flatMap(fill),
    ...dimensionLines(drawing, reduction, onPaper, pen('ink')),
    ...letterDrawing(drawing, window, reduction).map((lettering) => letter(lettering, toPaper, reduction, inks)),
  ];
}

function penColour(name: Pen, inks: Inks): string {
  const isColoured = name === 'accent' || name === 'limit';
  return paperStyle.pens[isColoured && inks === 'black' ? 'ink' : name];
}

function dimensionLines(
  { dimensions }: Drawing,
  reduction: number,
  onPaper: (lines: Lines) => Lines,
  colour: string,
): readonly PagePath[] {
  if (dimensions.length === 0) return [];
  const lines = new LineBuilder();
  for (const dimension of dimensions) {
    for (const segment of dimensionSegments(dimension, paperStyle.tickMm * reduction)) lines.segment(...segment);
  }
  const stroke = { colour, widthMm: paperStyle.widthsMm.fine, dashesMm: paperStyle.dashesMm.solid };
  return [{ kind: 'path', lines: onPaper(lines.build()), fill: null, stroke }];
}

/** A text with its capitals in the middle of its place. */
function letter(
  { text, pen, xMm, yMm, heightMm, turned }: Lettering,
  toPaper: (x: number, y: number) => readonly [number, number],
  reduction: number,
  inks: Inks,
): PageText {
  const [x, y] = toPaper(xMm, yMm);
  const sizeMm = wholeMicrometres(heightMm / reduction);
  const dropMm = (sizeMm * capHeight) / 2;
  return {
    kind: 'text',
    text: printableText(text, 'mono'),
    xMm: wholeMicrometres(turned ? x + dropMm : x),
    yMm: wholeMicrometres(turned ? y : y + dropMm),
    sizeMm,
    face: 'mono',
    align: 'middle',
    turned,
    colour: penColour(pen, inks),
    rim: true,
  };
}
