import type { Addresses } from '../../plan/addresses';
import type { Delay } from '../../plan/delay';
import type { Feed } from '../../plan/feed';
import type { Node } from '../../plan/node';
import type { Picture } from '../../plan/picture';
import type { Signal } from '../../plan/signal';
import type { Sync } from '../../plan/sync';
import type { PictureResults } from '../picture/picture-result';
import type { SurfaceSet } from '../surfaces/surface-table';
import type { ZonesResults } from '../zones/zone-result';
import { addDelays } from './add-delays';
import { giveAddresses } from './give-addresses';
import type { NodesLaidOut } from './lay-out-nodes';
import { listDevices } from './list-devices';
import type { NodesResults } from './node-result';
import { spreadSync } from './spread-sync';

export interface NodesInputs {
  readonly feed: Pick<Feed, 'zonesANode' | 'equalCanvases' | 'spareNodes' | 'bySurface'>;
  readonly signal: Pick<Signal, 'nodeId' | 'bySurface'>;
  readonly nodeItems: readonly Pick<Node, 'id' | 'name' | 'outputs' | 'canvasPixels'>[];
  readonly delay: Delay;
  readonly sync: Sync;
  readonly addresses: Addresses;
  readonly cameras: number;
  readonly cameraRate: Picture['base']['rate'];
  readonly surfaces: SurfaceSet;
  readonly picture: PictureResults;
  readonly zones: Pick<ZonesResults, 'zones' | 'surfaces'>;
  readonly laid: NodesLaidOut;
}

/** What feeds the processors: nodes and their canvases as laid out, the delay of every surface, sync and addresses. */
export function computeNodes(inputs: NodesInputs): NodesResults {
  const { laid, feed, sync, picture } = inputs;
  const spareNodes = laid.nodes.length === 0 ? 0 : feed.spareNodes;
  const devices =
    laid.nodes.length === 0
      ? []
      : listDevices({
          nodes: laid.nodes,
          spareNodes,
          surfaces: picture.surfaces,
          cameraRate: inputs.cameraRate,
          cameras: inputs.cameras,
          trackers: sync.trackers,
        });
  const addresses = giveAddresses(inputs.addresses, devices, sync.reference === 'ptp');
  return {
    ...laid,
    spareNodes,
    delays: addDelays(
      inputs.delay.steps,
      picture.surfaces.filter(({ pixels }) => pixels > 0),
    ),
    sync: spreadSync(sync, devices, addresses),
    addresses,
  };
}
