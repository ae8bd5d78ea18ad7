import type { SignalGear } from './signal-gear';

interface Drawing {
  readonly id: string;
  readonly powerW: number;
}

/** Watts that processors, breakouts and nodes draw together. An id that the catalogue does not hold draws nothing. */
export function signalLoad(
  gear: SignalGear,
  processors: readonly Drawing[],
  breakouts: readonly Drawing[],
  nodes: readonly Drawing[],
): number {
  const watts = (counts: ReadonlyMap<string, number>, items: readonly Drawing[]) =>
    items.reduce((sum, item) => sum + item.powerW * (counts.get(item.id) ?? 0), 0);
  return watts(gear.processors, processors) + watts(gear.breakouts, breakouts) + watts(gear.nodes, nodes);
}
