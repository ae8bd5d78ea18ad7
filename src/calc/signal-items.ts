import type { Processor } from '../plan/processor';
import type { RenderNode } from './nodes/node-result';
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
  /** Each that feeds a zone, and the spare ones, of the item of which most do. */
  readonly nodes: readonly ItemCount[];
}

export interface SignalItemsInputs {
  readonly processors: readonly Processor[];
  readonly zones: ZonesResults;
  readonly runs: RunsResults;
  readonly renderNodes: readonly Pick<RenderNode, 'itemId'>[];
  readonly spareNodes: number;
}

function tally(entries: readonly ItemCount[]): readonly ItemCount[] {
  const counts = new Map<string | null, number>();
  for (const { itemId, count } of entries) counts.set(itemId, (counts.get(itemId) ?? 0) + count);
  return [...counts].filter(([, count]) => count > 0).map(([itemId, count]) => ({ itemId, count }));
}

/** A spare node stands in for as many as it can: it is of the item of which there are most, of equals the first. */
function withSpare(nodes: readonly ItemCount[], spare: number): readonly ItemCount[] {
  const most = Math.max(...nodes.map(({ count }) => count));
  const place = nodes.findIndex(({ count }) => count === most);
  return nodes.map((node, i) => (i === place ? { ...node, count: node.count + spare } : node));
}

/** Signal equipment that the zones and their wiring ask for, by catalogue item, in the order in which the stage meets them. */
export function countSignalItems(inputs: SignalItemsInputs): SignalItems {
  const { processors, zones, runs } = inputs;
  const wired = new Map(runs.zones.map((zone) => [zone.processor, zone.breakouts]));
  const breakoutOf = (processorId: string) => {
    const outlets = processors.find(({ id }) => id === processorId)?.outlets;
    return outlets?.kind === 'breakouts' ? outlets.breakoutId : null;
  };
  return {
    processors: tally(zones.zones.map((zone) => ({ itemId: zone.processorId, count: 1 }))),
    breakouts: tally(
      zones.zones.map((zone) => ({
        itemId: breakoutOf(zone.processorId),
        count: wired.get(zone.processor) ?? zone.breakouts,
      })),
    ),
    nodes: withSpare(tally(inputs.renderNodes.map(({ itemId }) => ({ itemId, count: 1 }))), inputs.spareNodes),
  };
}
