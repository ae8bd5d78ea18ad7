import type { Processor } from '../plan/processor';
import type { Signal } from '../plan/signal';
import type { RunsResults } from './runs/run-result';
import type { ZonesResults } from './zones/zone-result';

/** How many of one catalogue item; `itemId` null where none is chosen. */
export interface ItemCount {
  readonly itemId: string | null;
  readonly count: number;
}

export interface SignalItems {
  readonly processors: readonly ItemCount[];
  /** With a run on them. */
  readonly breakouts: readonly ItemCount[];
  /** One a zone. */
  readonly nodes: readonly ItemCount[];
}

export interface SignalItemsInputs {
  readonly signal: Signal;
  readonly processors: readonly Processor[];
  readonly zones: ZonesResults;
  readonly runs: RunsResults;
}

function tally(entries: readonly ItemCount[]): readonly ItemCount[] {
  const counts = new Map<string | null, number>();
  for (const { itemId, count } of entries) counts.set(itemId, (counts.get(itemId) ?? 0) + count);
  return [...counts].filter(([, count]) => count > 0).map(([itemId, count]) => ({ itemId, count }));
}

/** Signal equipment that the zones and their wiring ask for, by catalogue item, in the order in which the stage meets them. */
export function countSignalItems({ signal, processors, zones, runs }: SignalItemsInputs): SignalItems {
  const wired = new Map(runs.zones.map((zone) => [zone.processor, zone.breakouts]));
  const breakoutOf = (processorId: string) => {
    const outlets = processors.find(({ id }) => id === processorId)?.outlets;
    return outlets?.kind === 'breakouts' ? outlets.breakoutId : null;
  };
  const nodeOf = (surfaceId: string) =>
    signal.bySurface.find((own) => own.surfaceId === surfaceId)?.nodeId ?? signal.nodeId;
  return {
    processors: tally(zones.zones.map((zone) => ({ itemId: zone.processorId, count: 1 }))),
    breakouts: tally(
      zones.zones.map((zone) => ({
        itemId: breakoutOf(zone.processorId),
        count: wired.get(zone.processor) ?? zone.breakouts,
      })),
    ),
    nodes: tally(zones.zones.map((zone) => ({ itemId: nodeOf(zone.surfaceId), count: 1 }))),
  };
}
