import type { Check } from '../chapter';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';

/** Inrush of the panels on the circuit that has most of it, where every sheet states one. A make current is not in the plan. */
export function checkInrush({ panels, surfaces }: PowerInputs, { circuits, order }: PowerResults): Check[] {
  const inrushA = surfaces.surfaces.map((surface) =>
    surface.types.map((type) => panels.find((panel) => panel.id === type.panelId)?.power.inrushA ?? null),
  );
  if (circuits.length === 0 || inrushA.flat().includes(null)) return [];
  const bySurface = new Map(surfaces.surfaces.map((surface, s) => [surface.surfaceId, s]));
  let worst = circuits[0]!;
  let most = 0;
  for (const circuit of circuits) {
    const s = bySurface.get(circuit.surfaceId)!;
    const surface = surfaces.surfaces[s]!;
    let sum = 0;
    for (let i = circuit.start; i < circuit.start + circuit.count; i++) {
      sum += inrushA[s]![surface.type[order[i]! - surfaces.offsets[s]!]!]!;
    }
    if (sum > most) {
      most = sum;
      worst = circuit;
    }
  }
  if (most === 0) return [];
  return [
    {
      id: 'power.inrush',
      chapter: 'power',
      severity: 'offer',
      measured: most,
      limit: null,
      unit: 'A',
      where: [{ kind: 'circuit', name: `circuit ${worst.name}` }],
      sentence:
        'Switched on at once, a circuit draws a peak of up to {measured}; what its device makes is not stated. Switch distros on one after the other.',
    },
  ];
}
