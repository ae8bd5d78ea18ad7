import type { Check } from '../chapter';
import { earthLeakage } from '../tables/earth-leakage';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';
import { unstatedFigure } from './unstated-figure';
import { usedPanels } from './used-panels';
import { worstCircuit } from './worst-circuit';

/** More than any circuit has: where panels hardly leak, their number is not what limits. */
export const mostPanelsBehindDevice = 1e6;

/** Panels that leak so much each behind one residual-current device. Source of the share: IEC 60364-5-53, from memory. */
export function panelsBehindDevice(leakageMa: number): number {
  return Math.min(mostPanelsBehindDevice, Math.floor((earthLeakage.share * earthLeakage.tripMa) / leakageMa + 1e-9));
}

/**
 * Standing leakage of the panels on one circuit, if that circuit had a device of its own. The plan does not state the
 * devices, so this never marks the chapter.
 */
export function checkLeakage(inputs: PowerInputs, results: PowerResults): Check[] {
  const used = usedPanels(inputs);
  const common = { id: 'power.leakage', chapter: 'power', unit: 'count' } as const;
  const unstated = used.filter((panel) => panel.power.leakageMa === null);
  if (unstated.length > 0) {
    const sentence =
      'Not stated: the earth leakage of these panels, so how many may be behind one residual-current device cannot be said.';
    return [unstatedFigure(common, unstated, sentence)];
  }
  const worst = worstCircuit(inputs, results, (panel) => panel.power.leakageMa ?? 0);
  if (worst === null) return [];
  const { circuit, sum } = worst;
  const limit = panelsBehindDevice(sum / circuit.count);
  return [
    {
      ...common,
      severity: circuit.count > limit ? 'offer' : 'pass',
      measured: circuit.count,
      limit,
      where: [{ kind: 'circuit', name: `circuit ${circuit.name}` }],
      sentence:
        'Panels on the circuit that leaks most: {measured}. Of such panels, a residual-current device of {trip} bears the leakage of {limit}. Choose the devices with an electrician.',
      values: { trip: { value: earthLeakage.tripMa / 1000, unit: 'A' } },
    },
  ];
}
