import type { Check } from '../chapter';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';
import { usedPanels } from './used-panels';
import { worstCircuit } from './worst-circuit';

/** Inrush of the panels on the circuit that has most of it, where every sheet states one. A make current is not in the plan. */
export function checkInrush(inputs: PowerInputs, results: PowerResults): Check[] {
  if (usedPanels(inputs).some((panel) => panel.power.inrushA === null)) return [];
  const worst = worstCircuit(inputs, results, (panel) => panel.power.inrushA ?? 0);
  if (worst === null) return [];
  return [
    {
      id: 'power.inrush',
      chapter: 'power',
      severity: 'offer',
      measured: worst.sum,
      limit: null,
      unit: 'A',
      where: [{ kind: 'circuit', name: `circuit ${worst.circuit.name}` }],
      sentence:
        'Switched on at once, a circuit draws a peak of up to {measured}; what its device makes is not stated. Switch distros on one after the other.',
    },
  ];
}
