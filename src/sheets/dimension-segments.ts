import type { Dimension } from './drawing';

/** From x1, y1 to x2, y2, y down. */
export type Segment = readonly [x1Mm: number, y1Mm: number, x2Mm: number, y2Mm: number];

/** The line of a dimension from end to end, then the slanted tick at each end, `tickMm` along the line and across it to both sides. */
export function dimensionSegments({ x1Mm, y1Mm, x2Mm, y2Mm }: Dimension, tickMm: number): readonly Segment[] {
  const length = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm) || 1;
  const alongX = ((x2Mm - x1Mm) / length) * tickMm;
  const alongY = ((y2Mm - y1Mm) / length) * tickMm;
  const dx = alongX - alongY;
  const dy = alongY + alongX;
  const tick = (x: number, y: number): Segment => [x - dx, y - dy, x + dx, y + dy];
  return [[x1Mm, y1Mm, x2Mm, y2Mm], tick(x1Mm, y1Mm), tick(x2Mm, y2Mm)];
}
