import { panelAt } from '../../../calc/surfaces/panel-at';
import { faultModelOf, type Wired } from '../../state/fault-model-of';
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

/** The run of a picked panel, port or cable, or the circuit of a picked one; null for what is no chain and on none. */
export function chainInHand(evaluation: Wired, selection: Selection): ChainInHand | null {
  const { surfaces, runs, power } = evaluation;
  const named = (order: Uint32Array, { start, count }: { readonly start: number; readonly count: number }) =>
    Array.from(order.subarray(start, start + count), (panel) => panelAt(surfaces, panel)?.name ?? '');
  const circuit = power.results.circuits[circuitOf(evaluation, selection)];
  if (circuit) {
    const panels = named(power.results.order, circuit);
    return { kind: 'circuit', title: `Circuit ${circuit.name}`, panels, at: -1 };
  }
  const run = runs.results.runs[runOf(evaluation, selection)];
  if (!run) return null;
  const at = selection.kind === 'panel' ? runs.results.placeOf[selection.index]! - 1 : -1;
  return { kind: 'port', title: `Port ${run.port}`, panels: named(runs.results.order, run), at };
}

function circuitOf(evaluation: Wired, selection: Selection): number {
  if (selection.kind === 'circuit') return selection.index;
  if (selection.kind !== 'part' || selection.part !== 'power-jumper') return -1;
  const { order, circuitOf: circuits } = evaluation.power.results;
  return circuits[order[selection.index]!] ?? -1;
}

function runOf(evaluation: Wired, selection: Selection): number {
  const { runOf: runs, order } = evaluation.runs.results;
  if (selection.kind === 'run') return selection.index;
  if (selection.kind === 'panel') return runs[selection.index] ?? -1;
  if (selection.kind !== 'part') return -1;
  if (selection.part === 'jumper') return runs[order[selection.index]!] ?? -1;
  const isOutlet = selection.part === 'port' || selection.part === 'home-run';
  return isOutlet ? (faultModelOf(evaluation).outlets[selection.index]?.run ?? -1) : -1;
}
