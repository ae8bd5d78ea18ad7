import type { HandChange, WayOfWiring } from '../../plan/hand-change';
import type { Fix } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { type AnchorGround, anchorAt, locateAnchor } from './locate-anchor';
import { wayKey } from './way-key';
import type { WiredZone } from './wire-zones';
import { zoneHolds } from './zone-holds';

/**
 * A fix that gives every zone of one surface a way by hand change, where the zone knows it; hand changes that give these zones
 * a way now are put out of the file. Null where no zone knows the way.
 */
export function chooseWayFix(
  label: string,
  way: WayOfWiring,
  zones: readonly WiredZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
): Fix | null {
  const key = wayKey(way);
  const knowing = zones.filter(({ answer }) => answer.ways.some((wiring) => wayKey(wiring.way) === key));
  const kept = changes.filter((change) => {
    if (change.kind !== 'way') return true;
    const located = locateAnchor(change.at, ground);
    return (
      'reason' in located || !knowing.some((zone) => zone.surface === located.surface && zoneHolds(zone, located.panel))
    );
  });
  const taken = new Set(kept.map(({ id }) => id));
  const added = knowing.flatMap(({ surface, table, panels }): HandChange[] => {
    const panel = panels.find((candidate) => candidate >= 0);
    const at = panel === undefined ? null : anchorAt(ground, surface, panel);
    if (at === null) return [];
    let number = 1;
    while (taken.has(`way-${table.letter}-${number}`)) number++;
    const id = `way-${table.letter}-${number}`;
    taken.add(id);
    return [{ kind: 'way', id, at, way }];
  });
  if (added.length === 0) return null;
  return setFieldsFix(label, 'way of wiring', [{ path: ['handChanges'], value: [...kept, ...added] }]);
}
