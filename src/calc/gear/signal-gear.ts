import type { Processor } from '../../plan/processor';
import type { Signal } from '../../plan/signal';
import type { ZonesResults } from '../zones/zone-result';

/** How many of each processor, breakout and node the zones take, by catalogue id. */
export interface SignalGear {
  readonly processors: ReadonlyMap<string, number>;
  readonly breakouts: ReadonlyMap<string, number>;
  readonly nodes: ReadonlyMap<string, number>;
}

function add(counts: Map<string, number>, id: string | null | undefined, count: number): void {
  if (id && count > 0) counts.set(id, (counts.get(id) ?? 0) + count);
}

/** Counts what drives the zones: a processor and a node for each, and the breakouts that their ports need. */
export function countSignalGear(
  { zones }: ZonesResults,
  signal: Pick<Signal, 'nodeId' | 'bySurface'>,
  processors: readonly Processor[],
): SignalGear {
  const gear = {
    processors: new Map<string, number>(),
    breakouts: new Map<string, number>(),
    nodes: new Map<string, number>(),
  };
  for (const zone of zones) {
    const outlets = processors.find((processor) => processor.id === zone.processorId)?.outlets;
    const own = signal.bySurface.find((entry) => entry.surfaceId === zone.surfaceId);
    add(gear.processors, zone.processorId, 1);
    add(gear.breakouts, outlets?.kind === 'breakouts' ? outlets.breakoutId : null, zone.breakouts);
    add(gear.nodes, own?.nodeId ?? signal.nodeId, 1);
  }
  return gear;
}
