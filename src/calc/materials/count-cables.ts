import type { Cable, CableKind } from '../../plan/cable';
import { cableName, cableOfKind } from './cable-name';
import type { NeededItem } from './needed-item';
import type { WiringCounts } from './wiring-counts';

/** Cables by kind, from the wiring and the circuits. The first of a kind in the catalogue is the one taken. */
export function countCables(cables: readonly Cable[], wiring: WiringCounts): readonly NeededItem[] {
  const counts: readonly (readonly [CableKind, number, string])[] = [
    ['home-run', wiring.runs + wiring.returns, wiring.returns > 0 ? 'one a run and one a return' : 'one a run'],
    ['data-jumper', wiring.panelsOnRuns - wiring.runs, 'panels less runs'],
    ['trunk', wiring.breakouts, 'one a breakout'],
    ['video', wiring.video, 'as many a processor as its link has, from its node'],
    ['circuit', wiring.circuits, 'one a circuit'],
    ['power-jumper', wiring.panelsOnCircuits - wiring.circuits, 'panels less circuits'],
  ];
  return counts.map(([kind, needed, countedAs]) => {
    const cable = cableOfKind(cables, kind);
    return {
      itemId: cable?.id ?? kind,
      group: 'cables',
      name: cableName(cables, kind),
      needed,
      massKgEach: cable?.massKg ?? 0,
      priceEach: cable?.price ?? null,
      leadDays: null,
      countedAs,
    };
  });
}
