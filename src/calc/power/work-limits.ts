import type { Step } from '../chapter';
import { earthLeakage } from '../tables/earth-leakage';
import { mostPanelsBehindDevice, panelsBehindDevice } from './check-leakage';
import type { PowerInputs } from './compute-power';
import { neutralBound } from './neutral-bound';
import type { PowerResults } from './power-result';
import { serviceLimitA } from './service-limit';
import { shareSource } from './share-source';
import { usedPanels } from './used-panels';

function workService({ power }: PowerInputs): Step[] {
  const limitA = serviceLimitA(power);
  if (limitA === null) return [];
  const points = power.servicePoints.map(({ legA }, i) => [`a${i + 1}`, legA] as const);
  return [
    {
      figure: 'what the service carries a leg',
      symbol: 'limit',
      expression: `share * (${points.map(([name]) => name).join(' + ')})`,
      numbers: { share: power.circuit.usableShare, ...Object.fromEntries(points) },
      value: limitA,
      unit: 'A',
      source: shareSource(power.circuit.usableShare),
    },
  ];
}

/** The bound that the check of the neutral states. */
function workHarmonics({ power }: PowerInputs, { worstLegA, circuits }: PowerResults): Step[] {
  if (power.connection !== 'leg-to-neutral' || power.supply.kind !== 'wye') return [];
  if (worstLegA === null || circuits.length === 0) return [];
  return [
    {
      figure: 'third harmonics on the neutral, at the most',
      symbol: 'N',
      expression: 'sqrt(3) * I',
      numbers: { I: worstLegA },
      value: neutralBound * worstLegA,
      unit: 'A',
      source: {
        kind: 'source',
        text: 'Masters, Renewable and Efficient Electric Power Systems, eq. 2.102; the bound by the squares of three pulses in turn',
      },
    },
  ];
}

/** Panels of each type behind one residual-current device, where their sheet states the leakage. */
function workLeakage(inputs: PowerInputs): Step[] {
  return usedPanels(inputs).flatMap(({ name, power: { leakageMa } }): Step[] =>
    leakageMa === null || leakageMa === 0
      ? []
      : [
          {
            figure: `panels behind one residual-current device, ${name}`,
            symbol: 'panels',
            expression: 'min(most, floor(share * trip / leakage + 1e-9))',
            numbers: {
              most: mostPanelsBehindDevice,
              share: earthLeakage.share,
              trip: earthLeakage.tripMa,
              leakage: leakageMa,
            },
            value: panelsBehindDevice(leakageMa),
            unit: 'count',
            source: {
              kind: 'source',
              text: `${earthLeakage.source}; a device of ${earthLeakage.tripMa} mA is common practice`,
              fromMemory: true,
            },
          },
        ],
  );
}

/** The limits that the Power chapter holds its figures against, where they are worked out and not typed in. */
export function workLimits(inputs: PowerInputs, results: PowerResults): Step[] {
  if (inputs.surfaces.total === 0) return [];
  return [...workService(inputs), ...workHarmonics(inputs, results), ...workLeakage(inputs)];
}
