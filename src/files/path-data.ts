import type { Lines } from '../sheets/drawing';
import { wholeMicrometres } from '../sheets/whole-micrometres';

/** Polylines as the `d` of an SVG path, to the micrometre. */
export function pathData({ xyMm, ends, closed }: Lines): string {
  const parts: string[] = [];
  let point = 0;
  for (const end of ends) {
    for (let first = point; point < end; point++) {
      parts.push(
        `${point === first ? 'M' : 'L'}${wholeMicrometres(xyMm[point * 2]!)} ${wholeMicrometres(xyMm[point * 2 + 1]!)}`,
      );
    }
    if (closed) parts.push('Z');
  }
  return parts.join('');
}
