import type { Check } from '../chapter';
import type { PowerInputs } from './compute-power';
import { neutralBound } from './neutral-bound';
import type { PowerResults } from './power-result';
import { usedPanels } from './used-panels';

/** Below this power factor a sheet speaks of a supply without correction, whose current is rich in harmonics. From memory. */
const correctedFactor = 0.9;

/**
 * Third harmonics of switching supplies between leg and neutral add up on the neutral instead of cancelling. Nobody states the
 * neutral's rating in a plan, so this is an offer; panels without power-factor correction make it a watch.
 */
export function checkNeutral({ power, panels, surfaces }: PowerInputs, results: PowerResults): Check[] {
  const { worstLegA } = results;
  if (power.connection !== 'leg-to-neutral' || power.supply.kind !== 'wye') return [];
  if (results.circuits.length === 0 || worstLegA === null) return [];
  const uncorrected = usedPanels({ panels, surfaces }).filter((panel) => panel.power.powerFactor < correctedFactor);
  return [
    {
      id: 'power.triplen-neutral',
      chapter: 'power',
      severity: uncorrected.length > 0 ? 'watch' : 'offer',
      measured: neutralBound * worstLegA,
      limit: null,
      unit: 'A',
      where: [
        { kind: 'leg', name: 'leg N' },
        ...uncorrected.slice(0, 49).map((panel) => ({ kind: 'item' as const, name: panel.name })),
      ],
      sentence:
        'At mains frequency the neutral carries {neutral}; third harmonics of switching supplies add to it, up to {measured}. What the neutral carries is not stated.',
      values: { neutral: { value: results.neutralA ?? 0, unit: 'A' } },
    },
  ];
}
