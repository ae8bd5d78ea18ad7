import type { Check } from '../chapter';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';
import { unstatedFigure } from './unstated-figure';
import { usedPanels } from './used-panels';
import { worstCircuit } from './worst-circuit';

/** Signal first, so that panels wake to a picture; distros in turn, so that their peaks do not add up (common practice, no source). */
const order = 'Switch processors on first, then one distro after the other.';

/** Inrush of the panels on the circuit that has most of it. The peak that its device stands is not in the plan. */
export function checkInrush(inputs: PowerInputs, results: PowerResults): Check[] {
  const about = { id: 'power.inrush', chapter: 'power', unit: 'A' } as const;
  const unstated = usedPanels(inputs).filter((panel) => panel.power.inrushA === null);
  if (unstated.length > 0) {
    const sentence = `Not stated: the inrush of these panels, so the peak when a circuit is switched on cannot be said. ${order}`;
    return [unstatedFigure(about, unstated, sentence)];
  }
  const worst = worstCircuit(inputs, results, (panel) => panel.power.inrushA ?? 0);
  if (worst === null) return [];
  return [
    {
      ...about,
      severity: 'offer',
      measured: worst.sum,
      limit: null,
      where: [{ kind: 'circuit', name: `circuit ${worst.circuit.name}` }],
      sentence: `Switched on at once, the panels of one circuit draw a peak of up to {measured}; what its device stands is not stated. ${order}`,
    },
  ];
}
