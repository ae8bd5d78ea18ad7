import type { Raster } from '../raster';
import { fillRectangle } from './fill-rectangle';

export interface Pixel {
  readonly x: number;
  readonly y: number;
}

/**
 * A straight line drawn with a round pen, from pixel to pixel: whole numbers. The pen is a whole number of pixels wide; an even
 * one stands half a pixel to the right of and below its point.
 */
export function drawLine(raster: Raster, from: Pixel, to: Pixel, pen: number, ink: number): void {
  const shift = Math.floor((pen - 1) / 2);
  const left = Math.min(from.x, to.x) - shift;
  const top = Math.min(from.y, to.y) - shift;
  const spans = penSpans(pen);
  if (from.y === to.y) {
    const length = Math.abs(to.x - from.x) + pen;
    for (const [row, inset] of spans.entries())
      fillRectangle(raster, left + inset, top + row, length - 2 * inset, 1, ink);
  } else if (from.x === to.x) {
    const length = Math.abs(to.y - from.y) + pen;
    for (const [column, inset] of spans.entries()) {
      fillRectangle(raster, left + column, top + inset, 1, length - 2 * inset, ink);
    }
  } else drawSlanted(raster, from, to, shift, spans, ink);
}

function drawSlanted(
  raster: Raster,
  from: Pixel,
  to: Pixel,
  shift: number,
  spans: readonly number[],
  ink: number,
): void {
  const steps = Math.max(Math.abs(to.x - from.x), Math.abs(to.y - from.y));
  for (let step = 0; step <= steps; step++) {
    const x = Math.round(from.x + ((to.x - from.x) * step) / steps) - shift;
    const y = Math.round(from.y + ((to.y - from.y) * step) / steps) - shift;
    for (const [row, inset] of spans.entries()) {
      fillRectangle(raster, x + inset, y + row, spans.length - 2 * inset, 1, ink);
    }
  }
}

/** For each row of a round pen the pixels that are missing on either side. */
function penSpans(pen: number): readonly number[] {
  const radius = pen / 2;
  return Array.from({ length: pen }, (_, row) => {
    const away = row + 0.5 - radius;
    return Math.max(0, Math.round(radius - Math.sqrt(radius * radius - away * away)));
  });
}
