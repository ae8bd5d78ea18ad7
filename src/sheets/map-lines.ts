import type { Lines } from './drawing';

/** The same lines with every point moved: out of one drawing's space into another's. */
export function mapLines(lines: Lines, move: (x: number, y: number) => readonly [number, number]): Lines {
  const xyMm = new Float64Array(lines.xyMm.length);
  for (let i = 0; i < xyMm.length; i += 2) {
    const [x, y] = move(lines.xyMm[i]!, lines.xyMm[i + 1]!);
    xyMm[i] = Math.round(x * 1000) / 1000 + 0;
    xyMm[i + 1] = Math.round(y * 1000) / 1000 + 0;
  }
  return { ...lines, xyMm };
}
