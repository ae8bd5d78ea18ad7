import type { Box, Drawing, Layer, Pen } from './drawing';
import { paperStyle } from './paper-style';
import { placeLabels } from './place-labels';

/** A text of a drawing on paper, in millimetres of the thing drawn, y down. */
export interface Lettering {
  readonly text: string;
  readonly layer: Layer;
  readonly pen: Pen;
  /** Middle of the text. */
  readonly xMm: number;
  readonly yMm: number;
  readonly heightMm: number;
  /** Reads from the right, upwards. */
  readonly turned: boolean;
}

/** The texts that have room in `window` where the drawing is put to paper at 1 : `reduction`, so that no two of them touch. */
export function letterDrawing(drawing: Drawing, window: Box, reduction: number): readonly Lettering[] {
  const { lettersMm, pixelsAMm } = paperStyle;
  const scale = pixelsAMm / reduction;
  const placed = placeLabels(drawing.labels, drawing.dimensions, {
    scale,
    leftMm: window.leftMm,
    topMm: window.topMm,
    widthPx: (window.rightMm - window.leftMm) * scale,
    heightPx: (window.bottomMm - window.topMm) * scale,
    sizes: {
      small: lettersMm.small * pixelsAMm,
      normal: lettersMm.normal * pixelsAMm,
      large: lettersMm.large * pixelsAMm,
    },
  });
  return placed.map(({ text, layer, pen, size, turned, x, y, width, height }) => ({
    text,
    layer,
    pen,
    xMm: window.leftMm + (x + width / 2) / scale,
    yMm: window.topMm + (y + height / 2) / scale,
    heightMm: lettersMm[size] * reduction,
    turned,
  }));
}
