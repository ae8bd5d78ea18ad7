import type { Box } from '../drawing';
import { LineBuilder } from '../line-builder';
import type { PagePath, PageStroke } from './page';

/** Straight lines, each from x1, y1 to x2, y2. */
export function ruleLines(
  segments: readonly (readonly [x1: number, y1: number, x2: number, y2: number])[],
  stroke: PageStroke,
): PagePath {
  const lines = new LineBuilder();
  for (const segment of segments) lines.segment(...segment);
  return { kind: 'path', lines: lines.build(), fill: null, stroke };
}

/** Rectangles with a line round each. */
export function ruleBoxes(boxes: readonly Box[], stroke: PageStroke): PagePath {
  const lines = new LineBuilder();
  for (const { leftMm, topMm, rightMm, bottomMm } of boxes) lines.rectangle(leftMm, topMm, rightMm, bottomMm);
  return { kind: 'path', lines: lines.build(true), fill: null, stroke };
}
