import type { Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import type { NodesInputs } from './compute-nodes';
import type { RenderNode } from './node-result';
import { shareCanvas } from './share-canvas';
import { shareNodesFix } from './share-nodes-fix';

type MendInputs = Pick<NodesInputs, 'feed' | 'signal' | 'zones'>;

/**
 * What makes the canvases of one surface no larger than `pixels`, to be proved on the whole plan: none larger than its zones need,
 * else as many zones on a node as that leaves, else zones as wide as that leaves on a node each. Null where none of them does.
 */
export function mendCanvas(
  { feed, signal, zones }: MendInputs,
  surfaceId: string,
  nodes: readonly RenderNode[],
  pixels: number,
): Fix | null {
  const fits = ({ width, height }: { readonly width: number; readonly height: number }) => width * height <= pixels;
  const shared = Math.max(...nodes.map(({ crops }) => crops.length));
  const own = feed.bySurface.findIndex((entry) => entry.surfaceId === surfaceId);
  if ((feed.bySurface[own]?.canvas ?? null) !== null && fits(shareCanvas(nodes, shared))) {
    const fix = setFieldsFix('As large as its zones need', 'canvas', [
      { path: ['feed', 'bySurface', own, 'canvas'], value: null },
    ]);
    return { ...fix, otherwise: null };
  }
  for (let most = shared - 1; most >= 1; most = most > 16 ? Math.floor(most * 0.8) : most - 1) {
    const canvas = shareCanvas(nodes, most);
    if (fits(canvas)) return { ...shareNodesFix(feed.bySurface, surfaceId, canvas.zones), otherwise: null };
  }
  const widths = zones.surfaces.find((cut) => cut.surfaceId === surfaceId)?.widths ?? [];
  const narrow = widths.filter(({ canvasWidth, canvasHeight }) => fits({ width: canvasWidth, height: canvasHeight }));
  const columns = Math.max(0, ...narrow.map((width) => width.columns));
  return columns === 0 || shared > 1 ? null : narrowZones({ signal, zones }, surfaceId, columns);
}

function narrowZones({ signal, zones }: Pick<MendInputs, 'signal' | 'zones'>, surfaceId: string, columns: number): Fix {
  const own = signal.bySurface.findIndex((entry) => entry.surfaceId === surfaceId);
  const { processorId } = zones.zones.find((zone) => zone.surfaceId === surfaceId)!;
  const alone = { surfaceId, processorId, nodeId: null, zoneColumnsMost: columns, zonesUp: null, returns: null };
  const field =
    own >= 0
      ? { path: ['signal', 'bySurface', own, 'zoneColumnsMost'], value: columns }
      : { path: ['signal', 'bySurface'], value: [...signal.bySurface, alone] };
  const label = columns === 1 ? 'Zones of one column' : `Zones of at most ${columns} columns`;
  return { ...setFieldsFix(label, 'zone width', [field]), otherwise: null };
}
