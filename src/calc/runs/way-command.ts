import type { Command } from '../../plan/commands';
import type { WayOfWiring } from '../../plan/hand-change';
import type { Plan } from '../../plan/plan';
import type { Evaluation } from '../evaluation';
import { changesForWay, type PlacedZone } from './changes-for-way';
import { wayKey } from './way-key';

/** What of an evaluation a choice of way hangs on. */
export type WayGround = Pick<Evaluation, 'surfaces' | 'ceilings' | 'zones' | 'runs'>;

/**
 * Wires a surface, or one zone of it by its number in the list, in one way by hand: every zone that knows the way gets it, the
 * others are left to the search, as all are with null. Changes of single runs stay. Null where that changes nothing: no zone
 * knows the way, or none has one by hand.
 */
export function wayCommand(
  plan: Pick<Plan, 'walls' | 'handChanges'>,
  { surfaces, ceilings, zones, runs }: WayGround,
  target: { readonly surfaceId: string } | { readonly zone: number },
  way: WayOfWiring | null,
): Command | null {
  const surfaceId = 'zone' in target ? zones.results.zones[target.zone]?.surfaceId : target.surfaceId;
  const surface = surfaces.surfaces.findIndex((table) => table.surfaceId === surfaceId);
  const table = surfaces.surfaces[surface];
  if (table === undefined) return null;
  const key = way && wayKey(way);
  const own: PlacedZone[] = [];
  const knowing: PlacedZone[] = [];
  zones.results.zones.forEach((zone, i) => {
    if (zone.surfaceId !== surfaceId || ('zone' in target && i !== target.zone)) return;
    const placed = { zone, surface, table };
    own.push(placed);
    if (runs.results.zones[i]?.ways.some((known) => wayKey(known) === key)) knowing.push(placed);
  });
  if (way !== null && knowing.length === 0) return null;
  const ground = { surfaces, walls: plan.walls, ceilings: ceilings.results };
  const value = changesForWay(way ?? { kind: 'columns' }, knowing, plan.handChanges, ground, own);
  if (way === null && value.length === plan.handChanges.length) return null;
  const label = 'zone' in target ? `way of wiring of zone ${target.zone + 1}` : `way of wiring on ${table.letter}`;
  return { name: 'set-fields', args: { fields: [{ path: ['handChanges'], value }], label } };
}
