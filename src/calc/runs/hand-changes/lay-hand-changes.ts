import type { HandChange } from '../../../plan/hand-change';
import type { Anchor } from '../../../plan/primitives';
import { type AnchorGround, locateAnchor } from '../locate-anchor';
import { measureWiring } from '../search/measure-wiring';
import type { WiredZone } from '../wire-zones';
import { zoneHolds } from '../zone-holds';
import { applyCut } from './apply-cut';
import { applyEntry } from './apply-entry';
import { applyJoin } from './apply-join';
import { wireByHand } from './wire-by-hand';
import type { Changed, ZoneRunsDraft } from './zone-runs';

/** A hand change that does not apply now, and why. */
export interface Resting {
  readonly id: string;
  readonly reason: string;
}

export interface LaidChanges {
  readonly zones: readonly WiredZone[];
  readonly resting: readonly Resting[];
}

/** A place of a zone, by the zone's number in the list. */
interface Spot {
  readonly zone: number;
  readonly place: number;
}

type StepChange = Exclude<HandChange, { kind: 'way' }>;

/**
 * Lays hand changes over the wiring that the search chose: first the ways of whole zones, then entries, cuts and joins in the
 * order in which they were made. They move no zone. What does not apply rests with its reason.
 */
export function layHandChanges(
  wired: readonly WiredZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
): LaidChanges {
  if (changes.length === 0) return { zones: wired, resting: [] };
  const zones = [...wired];
  const reasons = new Map<string, string>();
  layWays(zones, changes, ground, reasons);
  laySteps(zones, changes, ground, reasons);
  const resting = changes.flatMap(({ id }) => (reasons.has(id) ? [{ id, reason: reasons.get(id)! }] : []));
  return { zones, resting };
}

function layWays(
  zones: WiredZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
  reasons: Map<string, string>,
): void {
  const taken = new Set<number>();
  // The latest way of a zone holds, so they are read from the last to the first.
  for (const change of [...changes].reverse()) {
    if (change.kind !== 'way') continue;
    const spot = spotOf(zones, change.at, ground);
    if ('reason' in spot) {
      reasons.set(change.id, spot.reason);
      continue;
    }
    if (taken.has(spot.zone)) {
      reasons.set(change.id, 'a later change gives the same zone its way');
      continue;
    }
    const zone = zones[spot.zone]!;
    const wiring = wireByHand(zone, change.way);
    if ('reason' in wiring) {
      reasons.set(change.id, wiring.reason);
      continue;
    }
    taken.add(spot.zone);
    zones[spot.zone] = { ...zone, wiring, byHand: true };
  }
}

function laySteps(
  zones: WiredZone[],
  changes: readonly HandChange[],
  ground: AnchorGround,
  reasons: Map<string, string>,
): void {
  const drafts = new Map<number, ZoneRunsDraft>();
  for (const change of changes) {
    if (change.kind === 'way') continue;
    const spot = spotOf(zones, change.kind === 'entry' ? change.at : change.from, ground);
    const other = change.kind === 'entry' ? spot : spotOf(zones, change.to, ground);
    const missing = 'reason' in spot ? spot : 'reason' in other ? other : null;
    if (missing !== null || 'reason' in spot || 'reason' in other) {
      reasons.set(change.id, missing!.reason);
      continue;
    }
    if (spot.zone !== other.zone) {
      reasons.set(change.id, 'its two panels are in different zones');
      continue;
    }
    const draft = drafts.get(spot.zone) ?? draftOf(zones[spot.zone]!);
    const changed = applyStep(draft, change, spot.place, other.place);
    if ('reason' in changed) reasons.set(change.id, changed.reason);
    else drafts.set(spot.zone, { ...draft, runs: changed.runs });
  }
  for (const [index, draft] of drafts) zones[index] = remeasured(zones[index]!, draft);
}

function applyStep(draft: ZoneRunsDraft, { kind }: StepChange, from: number, to: number): Changed {
  if (kind === 'entry') return applyEntry(draft, from);
  return kind === 'cut' ? applyCut(draft, from, to) : applyJoin(draft, from, to);
}

function spotOf(zones: readonly WiredZone[], anchor: Anchor, ground: AnchorGround): Spot | { readonly reason: string } {
  const located = locateAnchor(anchor, ground);
  if ('reason' in located) return located;
  const { surface, panel } = located;
  const zone = zones.findIndex((candidate) => candidate.surface === surface && zoneHolds(candidate, panel));
  if (zone < 0) return { reason: 'its panel is in no zone' };
  return { zone, place: zones[zone]!.panels.indexOf(panel) };
}

function draftOf({ grid, limits, wiring }: WiredZone): ZoneRunsDraft {
  const runs: number[][] = [];
  for (let i = 0; i < wiring.ports; i++) runs.push([...wiring.order.subarray(wiring.start[i], wiring.start[i + 1])]);
  return { grid, limits, runs };
}

function remeasured(zone: WiredZone, { grid, limits, runs }: ZoneRunsDraft): WiredZone {
  const start = new Int32Array(runs.length + 1);
  runs.forEach((run, i) => {
    start[i + 1] = start[i]! + run.length;
  });
  const order = Int32Array.from(runs.flat());
  const { way, tooLarge } = zone.wiring;
  return { ...zone, wiring: measureWiring(grid, limits, way, { order, start }, tooLarge), byHand: true };
}
