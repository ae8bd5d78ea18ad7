import type { Breakout } from '../../plan/breakout';
import type { Node } from '../../plan/node';
import { countSignalItems, type ItemCount, type SignalItemsInputs } from '../signal-items';

export interface SignalLoadInputs extends SignalItemsInputs {
  readonly breakouts: readonly Breakout[];
  readonly nodes: readonly Node[];
}

/** Watts of processors, breakouts and nodes together; what is not chosen or not in the catalogue counts nothing. */
export function signalLoad(inputs: SignalLoadInputs): number {
  const items = countSignalItems(inputs);
  const watts = (counts: readonly ItemCount[], list: readonly { readonly id: string; readonly powerW: number }[]) =>
    counts.reduce((sum, { itemId, count }) => sum + count * (list.find(({ id }) => id === itemId)?.powerW ?? 0), 0);
  return (
    watts(items.processors, inputs.processors) +
    watts(items.breakouts, inputs.breakouts) +
    watts(items.nodes, inputs.nodes)
  );
}
