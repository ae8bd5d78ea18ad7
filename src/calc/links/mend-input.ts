import type { Fix } from '../chapter';
import { shareCanvas } from '../nodes/share-canvas';
import { shareNodesFix } from '../nodes/share-nodes-fix';
import { setFieldsFix } from '../set-fields-fix';
import { inputPayload } from '../zones/input-payload';
import type { Canvas } from './canvas';
import type { LinksInputs } from './compute-links';

/**
 * What lets every processor of a surface take in the canvas that it shares, to be proved on the whole plan: a canvas no larger than
 * its zones need where a larger one is stated, else as many zones on a node as the input leaves. Null where neither does.
 */
export function mendInput(inputs: LinksInputs, surfaceId: string, limitBps: number): Fix | null {
  const nodes = inputs.nodes.filter((node) => node.surfaceId === surfaceId);
  const served = inputs.picture.surfaces.find((fed) => fed.surfaceId === surfaceId)?.served ?? [];
  const fits = (canvas: Canvas) => {
    const payload = inputPayload(canvas, served, inputs);
    return payload !== null && payload <= limitBps;
  };
  const shared = Math.max(...nodes.map(({ crops }) => crops.length));
  const own = inputs.bySurface.findIndex((entry) => entry.surfaceId === surfaceId);
  if ((inputs.bySurface[own]?.canvas ?? null) !== null && fits(shareCanvas(nodes, shared))) {
    const field = { path: ['feed', 'bySurface', own, 'canvas'], value: null };
    return { ...setFieldsFix('As large as its zones need', 'canvas', [field]), otherwise: null };
  }
  for (let most = shared - 1; most >= 1; most = most > 16 ? Math.floor(most * 0.8) : most - 1) {
    const canvas = shareCanvas(nodes, most);
    if (fits(canvas)) return { ...shareNodesFix(inputs.bySurface, surfaceId, canvas.zones), otherwise: null };
  }
  return null;
}
