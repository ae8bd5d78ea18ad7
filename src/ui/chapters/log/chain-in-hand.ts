import { panelAt } from '../../../calc/surfaces/panel-at';
import type { Wired } from '../../state/fault-model-of';
import type { Selection } from '../../state/selection';

/** A run or a circuit in the order of its cable, first panel first. */
export interface ChainInHand {
  readonly kind: 'port' | 'circuit';
  /** 'Port 3B-04'. */
  readonly title: string;
  readonly panels: readonly string[];
  /** Place of the picked panel in it; -1 where none of it is picked. */
  readonly at: number;
}

/** The run of a picked panel or port, or the picked circuit; null for what is no chain and on none. */
export function chainInHand({ surfaces, runs, power }: Wired, selection: Selection): ChainInHand | null {
  const { results } = runs;
  const named = (order: Uint32Array, { start, count }: { readonly start: number; readonly count: number }) =>
    Array.from(order.subarray(start, start + count), (panel) => panelAt(surfaces, panel)?.name ?? '');
  if (selection.kind === 'circuit') {
    const circuit = power.results.circuits[selection.index];
    if (!circuit) return null;
    const panels = named(power.results.order, circuit);
    return { kind: 'circuit', title: `Circuit ${circuit.name}`, panels, at: -1 };
  }
  if (selection.kind !== 'panel' && selection.kind !== 'run') return null;
  const run = results.runs[selection.kind === 'run' ? selection.index : (results.runOf[selection.index] ?? -1)];
  if (!run) return null;
  const at = selection.kind === 'run' ? -1 : results.placeOf[selection.index]! - 1;
  return { kind: 'port', title: `Port ${run.port}`, panels: named(results.order, run), at };
}
