import { panelAt } from '../../surfaces/panel-at';
import type { SurfaceSet } from '../../surfaces/surface-table';

/**
 * Pixels that panels on one port count for: their own, or the smallest rectangle of the canvas round them. A rectangle is
 * drawn on each surface for itself.
 */
export function countedPixels(set: SurfaceSet, panels: readonly number[], counting: 'panels' | 'rectangle'): number {
  let own = 0;
  const boxes = new Map<string, { left: number; right: number; top: number; bottom: number }>();
  for (const index of panels) {
    const { surface, type } = panelAt(set, index)!;
    const local = index - set.offsets[set.surfaces.indexOf(surface)]!;
    const left = surface.canvasX[local]!;
    const top = surface.canvasY[local]!;
    const right = left + type.pixelsWide;
    const bottom = top + type.pixelsHigh;
    own += type.pixelsWide * type.pixelsHigh;
    const box = boxes.get(surface.surfaceId);
    if (box === undefined) {
      boxes.set(surface.surfaceId, { left, right, top, bottom });
      continue;
    }
    box.left = Math.min(box.left, left);
    box.right = Math.max(box.right, right);
    box.top = Math.min(box.top, top);
    box.bottom = Math.max(box.bottom, bottom);
  }
  if (counting === 'panels') return own;
  return [...boxes.values()].reduce((sum, { left, right, top, bottom }) => sum + (right - left) * (bottom - top), 0);
}
