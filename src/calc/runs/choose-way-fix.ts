import type { HandChange, WayOfWiring } from '../../plan/hand-change';
import type { Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { changesForWay } from './changes-for-way';
import type { AnchorGround } from './locate-anchor';
import { wayKey } from './way-key';
import type { WiredZone } from './wire-zones';

/** A fix that gives those zones of a surface a way by hand change that know it. Null where none does. */
export function chooseWayFix(
  label: string,
  way: WayOfWiring,
  zones: readonly WiredZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
): Fix | null {
  const key = wayKey(way);
  const knowing = zones.filter(({ answer }) => answer.ways.some((wiring) => wayKey(wiring.way) === key));
  if (knowing.length === 0) return null;
  const value = changesForWay(way, knowing, changes, ground);
  return setFieldsFix(label, 'way of wiring', [{ path: ['handChanges'], value }]);
}
