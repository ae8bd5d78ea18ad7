import type { HandChange, WayOfWiring } from '../../plan/hand-change';
import type { Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { changesForWay } from './changes-for-way';
import { layHandChanges } from './hand-changes/lay-hand-changes';
import type { AnchorGround } from './locate-anchor';
import { wayKey } from './way-key';
import type { WiredZone } from './wire-zones';

/**
 * A fix that gives those zones of a surface a way by hand change that know it, and leaves the others to the search. Null where
 * none knows it, and where the zones as they are after it do not `hold` what the fix is offered for: single changes by hand
 * stay, and may take back what the way gains.
 */
export function chooseWayFix(
  label: string,
  way: WayOfWiring,
  zones: readonly WiredZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
  holds: (after: readonly WiredZone[]) => boolean,
): Fix | null {
  const key = wayKey(way);
  const knowing = zones.filter(({ answer }) => answer.ways.some((wiring) => wayKey(wiring.way) === key));
  if (knowing.length === 0) return null;
  const value = changesForWay(way, knowing, changes, ground, zones);
  const searched = zones.map((zone) => ({ ...zone, wiring: zone.searched, byHand: false }));
  if (!holds(layHandChanges(searched, value, ground).zones)) return null;
  return setFieldsFix(label, 'way of wiring', [{ path: ['handChanges'], value }]);
}
