import type { Node } from '../../plan/node';
import type { Plan } from '../../plan/plan';
import type { Chapter } from '../chapter';
import { memo, memoView } from '../memo';
import type { PictureResults } from '../picture/picture-result';
import type { SurfaceSet } from '../surfaces/surface-table';
import type { ZonesResults } from '../zones/zone-result';
import { checkNodes } from './check-nodes';
import { computeNodes, type NodesInputs } from './compute-nodes';
import { layOutNodes } from './lay-out-nodes';
import type { NodesResults } from './node-result';
import { workNodes } from './work-nodes';

type Givens = Pick<Plan, 'feed' | 'signal' | 'delay' | 'sync' | 'addresses' | 'picture' | 'wish' | 'catalogue'>;

interface Ground {
  readonly surfaces: SurfaceSet;
  readonly picture: PictureResults;
  readonly zones: ZonesResults;
}

/** The chapter of render nodes with memos of its own: an edit of delay, sync or addresses leaves the canvases as they are. */
export function nodesChapter(onCompute: () => void): (plan: Givens, ground: Ground) => Chapter<NodesResults> {
  const itemViews = memoView(({ id, name, outputs, canvasPixels }: Node) => ({ id, name, outputs, canvasPixels }));
  const layOut = memo(layOutNodes);
  const chapter = memo(
    (feed: NodesInputs['feed'], signal: NodesInputs['signal'], rest: Omit<NodesInputs, 'feed' | 'signal'>) => {
      onCompute();
      const inputs = { ...rest, feed, signal };
      const results = computeNodes(inputs);
      return { results, checks: checkNodes(inputs, results), working: workNodes(inputs, results) };
    },
  );
  return (plan, { surfaces, picture, zones }) => {
    const { zonesANode, equalCanvases, spareNodes, bySurface } = plan.feed;
    const feed = { zonesANode, equalCanvases, bySurface };
    const signal = { nodeId: plan.signal.nodeId, bySurface: plan.signal.bySurface };
    const nodeItems = itemViews(plan.catalogue.nodes);
    return chapter({ ...feed, spareNodes }, signal, {
      nodeItems,
      delay: plan.delay,
      sync: plan.sync,
      addresses: plan.addresses,
      cameras: plan.wish.camerasAtOnce,
      cameraRate: plan.picture.base.rate,
      surfaces,
      picture,
      zones,
      laid: layOut(feed, signal, { nodeItems, surfaces, picture, zones: zones.zones }),
    });
  };
}
