import type { HandChange, WayOfWiring } from '../../plan/hand-change';
import { type AnchorGround, anchorAt, locateAnchor } from './locate-anchor';
import type { WiredZone } from './wire-zones';
import { zoneHolds } from './zone-holds';

/** What of a zone a hand change of its way needs. */
export type PlacedZone = Pick<WiredZone, 'zone' | 'surface' | 'table'>;

/**
 * The hand changes of a plan with a way for each of these zones: changes that give a way now to any of the zones `cleared`
 * make room, every other one stays as it is. Ids are new ones of the form 'way-A-1'.
 */
export function changesForWay(
  way: WayOfWiring,
  zones: readonly PlacedZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
  cleared: readonly PlacedZone[] = zones,
): HandChange[] {
  const kept = changes.filter((change) => {
    if (change.kind !== 'way') return true;
    const located = locateAnchor(change.at, ground);
    if ('reason' in located) return true;
    return !cleared.some((zone) => zone.surface === located.surface && zoneHolds(zone, located.panel));
  });
  const taken = new Set(kept.map(({ id }) => id));
  const numbers = new Map<string, number>();
  const added = zones.flatMap((zone): HandChange[] => {
    const panel = firstPanel(zone);
    const at = panel < 0 ? null : anchorAt(ground, zone.surface, panel);
    if (at === null) return [];
    const id = nextId(zone.table.letter, taken, numbers);
    return [{ kind: 'way', id, at, way }];
  });
  return [...kept, ...added];
}

/** The next id of a surface that is not taken; `numbers` remembers how far each letter has come. */
function nextId(letter: string, taken: ReadonlySet<string>, numbers: Map<string, number>): string {
  let number = numbers.get(letter) ?? 0;
  do number++;
  while (taken.has(`way-${letter}-${number}`));
  numbers.set(letter, number);
  return `way-${letter}-${number}`;
}

/** The lowest panel of the zone's first column that has one; -1 where none has. */
function firstPanel({ zone, table }: PlacedZone): number {
  for (let column = zone.firstColumn; column < zone.firstColumn + zone.columns; column++) {
    for (let row = zone.firstRow; row < zone.firstRow + zone.rows; row++) {
      const panel = table.at[(column - 1) * table.rows + row - 1]!;
      if (panel >= 0) return panel;
    }
  }
  return -1;
}
