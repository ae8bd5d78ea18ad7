import type { CableKind } from '../../plan/cable';

/** What cables are counted from. */
export interface WiringCounts {
  readonly panels: number;
  readonly runs: number;
  readonly panelsOnRuns: number;
  readonly circuits: number;
  readonly panelsOnCircuits: number;
  readonly breakouts: number;
  readonly zones: number;
}

export interface CableCount {
  readonly kind: CableKind;
  readonly needed: number;
  readonly countedAs: string;
}

/** Cables by kind: a chain of n panels takes n - 1 jumpers, and one cable that leads to it. */
export function countCables(counts: WiringCounts): readonly CableCount[] {
  return [
    { kind: 'home-run', needed: counts.runs, countedAs: 'one a run' },
    { kind: 'data-jumper', needed: counts.panelsOnRuns - counts.runs, countedAs: 'panels less runs' },
    { kind: 'trunk', needed: counts.breakouts, countedAs: 'one a breakout' },
    { kind: 'video', needed: counts.zones, countedAs: 'one a zone' },
    { kind: 'circuit', needed: counts.circuits, countedAs: 'one a circuit' },
    { kind: 'power-jumper', needed: counts.panelsOnCircuits - counts.circuits, countedAs: 'panels less circuits' },
  ];
}
