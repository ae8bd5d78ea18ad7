import type { Raster } from '../raster';
import type { Pixel } from './draw-line';
import { fillRectangle } from './fill-rectangle';

/** Fills the pixels whose middles lie in a triangle or on its edge; corners are middles of pixels. */
export function fillTriangle(raster: Raster, a: Pixel, b: Pixel, c: Pixel, ink: number): void {
  const edges = [
    [a, b],
    [b, c],
    [c, a],
  ] as const;
  const low = Math.min(a.y, b.y, c.y);
  const high = Math.max(a.y, b.y, c.y);
  for (let y = Math.ceil(low); y <= high; y++) {
    let left = Infinity;
    let right = -Infinity;
    for (const [p, q] of edges) {
      if (Math.min(p.y, q.y) > y || Math.max(p.y, q.y) < y) continue;
      for (const x of p.y === q.y ? [p.x, q.x] : [p.x + ((q.x - p.x) * (y - p.y)) / (q.y - p.y)]) {
        left = Math.min(left, x);
        right = Math.max(right, x);
      }
    }
    const first = Math.ceil(left);
    if (left <= right) fillRectangle(raster, first, y, Math.floor(right) - first + 1, 1, ink);
  }
}
