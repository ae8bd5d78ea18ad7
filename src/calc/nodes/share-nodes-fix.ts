import type { Feed } from '../../plan/feed';
import type { Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';

/** At most so many zones on each node of one surface, whatever the others have. */
export function shareNodesFix(bySurface: Feed['bySurface'], surfaceId: string, zonesANode: number): Fix {
  const own = bySurface.findIndex((entry) => entry.surfaceId === surfaceId);
  const label = zonesANode === 1 ? 'A node for each zone' : `At most ${zonesANode} zones on a node`;
  const field =
    own >= 0
      ? { path: ['feed', 'bySurface', own, 'zonesANode'], value: zonesANode }
      : { path: ['feed', 'bySurface'], value: [...bySurface, { surfaceId, zonesANode, linkId: null, canvas: null }] };
  return setFieldsFix(label, 'zones a node', [field]);
}
