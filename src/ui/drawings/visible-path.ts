import type { Lines } from '../../sheets/drawing';
import type { Size, View } from './view';

/** How far outside its window a line still runs on, in pixels: wider than any stroke. */
const overPx = 40;
/** A clipped line begins at a multiple of this from its true beginning, so that dashes stay where they are as the drawing moves. */
const dashPx = 240;

/**
 * Path data, in pixels of the window, of the part of some polylines that shows there: what lies outside costs nothing, and
 * strokes are as wide as they are. Closed polylines are taken whole or not at all.
 */
export function visiblePath(lines: Lines, view: View, size: Size): string {
  const { xyMm, ends, closed } = lines;
  const boxes = boxesOf(lines);
  const { scale } = view;
  const x = (mm: number) => (mm - view.leftMm) * scale;
  const y = (mm: number) => (mm - view.topMm) * scale;
  const parts: string[] = [];
  let point = 0;
  for (let i = 0; i < ends.length; i++) {
    const end = ends[i]!;
    const start = point;
    point = end;
    const [left, top, right, bottom] = [
      x(boxes[i * 4]!),
      y(boxes[i * 4 + 1]!),
      x(boxes[i * 4 + 2]!),
      y(boxes[i * 4 + 3]!),
    ];
    if (right < -overPx || left > size.width + overPx || bottom < -overPx || top > size.height + overPx) continue;
    const inside = left >= -overPx && right <= size.width + overPx && top >= -overPx && bottom <= size.height + overPx;
    if (closed || inside) {
      for (let k = start; k < end; k++) {
        parts.push(`${k === start ? 'M' : 'L'}${tenth(x(xyMm[k * 2]!))} ${tenth(y(xyMm[k * 2 + 1]!))}`);
      }
      if (closed) parts.push('Z');
      continue;
    }
    for (let k = start + 1; k < end; k++) {
      const segment = clipped(x(xyMm[k * 2 - 2]!), y(xyMm[k * 2 - 1]!), x(xyMm[k * 2]!), y(xyMm[k * 2 + 1]!), size);
      if (segment !== null)
        parts.push(`M${tenth(segment[0])} ${tenth(segment[1])}L${tenth(segment[2])} ${tenth(segment[3])}`);
    }
  }
  return parts.join('');
}

const known = new WeakMap<Lines, Float64Array>();

/** Left, top, right, bottom of every polyline. */
function boxesOf(lines: Lines): Float64Array {
  const before = known.get(lines);
  if (before !== undefined) return before;
  const { xyMm, ends } = lines;
  const boxes = new Float64Array(ends.length * 4);
  let point = 0;
  for (let i = 0; i < ends.length; i++) {
    boxes.set([Infinity, Infinity, -Infinity, -Infinity], i * 4);
    for (; point < ends[i]!; point++) {
      boxes[i * 4] = Math.min(boxes[i * 4]!, xyMm[point * 2]!);
      boxes[i * 4 + 1] = Math.min(boxes[i * 4 + 1]!, xyMm[point * 2 + 1]!);
      boxes[i * 4 + 2] = Math.max(boxes[i * 4 + 2]!, xyMm[point * 2]!);
      boxes[i * 4 + 3] = Math.max(boxes[i * 4 + 3]!, xyMm[point * 2 + 1]!);
    }
  }
  known.set(lines, boxes);
  return boxes;
}

/** The part of a segment inside the window and a little round it; null where there is none. */
function clipped(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  size: Size,
): readonly [number, number, number, number] | null {
  let from = 0;
  let until = 1;
  const clip = (start: number, change: number, high: number) => {
    if (change === 0) {
      if (start < -overPx || start > high + overPx) until = -1;
      return;
    }
    const a = (-overPx - start) / change;
    const b = (high + overPx - start) / change;
    from = Math.max(from, Math.min(a, b));
    until = Math.min(until, Math.max(a, b));
  };
  clip(x1, x2 - x1, size.width);
  clip(y1, y2 - y1, size.height);
  if (until <= from) return null;
  const length = Math.hypot(x2 - x1, y2 - y1);
  const begin = length === 0 ? 0 : (Math.floor((from * length) / dashPx) * dashPx) / length;
  return [x1 + (x2 - x1) * begin, y1 + (y2 - y1) * begin, x1 + (x2 - x1) * until, y1 + (y2 - y1) * until];
}

const tenth = (px: number) => Math.round(px * 10) / 10;
