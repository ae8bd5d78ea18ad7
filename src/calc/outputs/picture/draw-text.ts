import type { Raster } from '../raster';
import { drawLine } from './draw-line';
import { glyphStrokes } from './glyph-strokes';

/** Units of a glyph's grid: wide, high, and between two glyphs; a blank is narrower. */
const glyph = { width: 4, height: 6, gap: 2, blank: 2 } as const;

const widthOf = (sign: string) => (sign === ' ' ? glyph.blank : glyph.width);

/** Pen for letters whose grid has `unit` pixels a side: bold, as one reads a wall from afar. */
export function penOf(unit: number): number {
  return Math.max(1, Math.round(unit * 0.85));
}

/** Pixels that a text takes, pen included; nothing for no text. */
export function textSize(text: string, unit: number): { readonly width: number; readonly height: number } {
  if (text === '') return { width: 0, height: 0 };
  const signs = [...text];
  const units = signs.reduce((sum, sign) => sum + widthOf(sign), (signs.length - 1) * glyph.gap);
  return { width: units * unit + penOf(unit), height: glyph.height * unit + penOf(unit) };
}

/** The greatest grid, in whole pixels, at which a text is not wider than this; 0 where it is wider at 1. */
export function unitForWidth(text: string, width: number): number {
  let unit = 0;
  while (text !== '' && textSize(text, unit + 1).width <= width) unit++;
  return unit;
}

/** Writes a text with its upper left pixel at (x, y). */
export function drawText(raster: Raster, text: string, x: number, y: number, unit: number, ink: number): void {
  const pen = penOf(unit);
  const shift = Math.floor((pen - 1) / 2);
  let left = x + shift;
  for (const sign of text) {
    const begin = left;
    const at = (point: readonly [number, number]) => ({ x: begin + point[0] * unit, y: y + shift + point[1] * unit });
    for (const stroke of glyphStrokes(sign)) {
      for (let i = 1; i < stroke.length; i++) drawLine(raster, at(stroke[i - 1]!), at(stroke[i]!), pen, ink);
    }
    left += (widthOf(sign) + glyph.gap) * unit;
  }
}
