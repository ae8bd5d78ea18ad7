import type { Feed } from '../../plan/feed';
import type { Fix } from '../chapter';
import type { NodesInputs } from './compute-nodes';
import type { RenderNode } from './node-result';
import { shareCanvas } from './share-canvas';
import { shareNodesFix } from './share-nodes-fix';

/** Counts that are tried: a stage of thousands of zones has no time for all. */
const mostTries = 32;

/**
 * The count of zones a node, nearest to the one there is (of two the smaller), that shares them out to several canvases, equal without a blank pixel,
 * which the node sends; `otherwise` where that does not hold on the whole plan. Null where no count does.
 */
export function evenOutZones(
  bySurface: Feed['bySurface'],
  surfaceId: string,
  nodes: readonly RenderNode[],
  item: NodesInputs['nodeItems'][number] | null,
  otherwise: Fix,
): Fix | null {
  const now = Math.max(...nodes.map(({ crops }) => crops.length));
  const zones = nodes.reduce((sum, { crops }) => sum + crops.length, 0);
  const counts = Array.from({ length: zones }, (_, i) => i + 1)
    .sort((a, b) => Math.abs(a - now) - Math.abs(b - now))
    .slice(0, mostTries);
  const even = counts
    .map((count) => shareCanvas(nodes, count))
    .find(({ isEqual, nodes: several, zones: shared, width, height }) => {
      const isSent = item === null || item.canvasPixels === null || width * height <= item.canvasPixels;
      return isEqual && several > 1 && isSent && (item === null || shared <= item.outputs);
    });
  return even === undefined ? null : { ...shareNodesFix(bySurface, surfaceId, even.zones), otherwise };
}
