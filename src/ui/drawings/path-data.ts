import type { Lines } from '../../sheets/drawing';

const known = new WeakMap<Lines, string>();

/** Path data of SVG for a set of polylines, made once for each set. Tenths of a millimetre are finer than any screen. */
export function pathData(lines: Lines): string {
  const before = known.get(lines);
  if (before !== undefined) return before;
  const { xyMm, ends, closed } = lines;
  const parts: string[] = [];
  let point = 0;
  for (const end of ends) {
    let lastX = Number.NaN;
    let lastY = Number.NaN;
    for (let first = true; point < end; point++, first = false) {
      const x = Math.round(xyMm[point * 2]! * 10) / 10;
      const y = Math.round(xyMm[point * 2 + 1]! * 10) / 10;
      if (first) parts.push(`M${x} ${y}`);
      else if (x === lastX) parts.push(`V${y}`);
      else if (y === lastY) parts.push(`H${x}`);
      else parts.push(`L${x} ${y}`);
      lastX = x;
      lastY = y;
    }
    if (closed) parts.push('Z');
  }
  const data = parts.join('');
  known.set(lines, data);
  return data;
}
