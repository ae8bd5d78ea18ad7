import type { Box, Drawing } from './drawing';

/** The rectangle round everything in a drawing but its texts and the ticks of its dimensions; its box where it holds nothing. */
export function drawingExtent({
  fills,
  strokes,
  marks,
  dimensions,
  box,
}: Pick<Drawing, 'fills' | 'strokes' | 'marks' | 'dimensions' | 'box'>): Box {
  let leftMm = Number.POSITIVE_INFINITY;
  let topMm = Number.POSITIVE_INFINITY;
  let rightMm = Number.NEGATIVE_INFINITY;
  let bottomMm = Number.NEGATIVE_INFINITY;
  const take = (x: number, y: number) => {
    leftMm = Math.min(leftMm, x);
    rightMm = Math.max(rightMm, x);
    topMm = Math.min(topMm, y);
    bottomMm = Math.max(bottomMm, y);
  };
  for (const { lines } of [...fills, ...strokes, ...marks]) {
    for (let i = 0; i < lines.xyMm.length; i += 2) take(lines.xyMm[i]!, lines.xyMm[i + 1]!);
  }
  for (const { x1Mm, y1Mm, x2Mm, y2Mm } of dimensions) {
    take(x1Mm, y1Mm);
    take(x2Mm, y2Mm);
  }
  return leftMm > rightMm ? box : { leftMm, topMm, rightMm, bottomMm };
}
