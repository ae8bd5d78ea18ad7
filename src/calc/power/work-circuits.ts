import type { Source, Step } from '../chapter';
import type { PowerInputs } from './compute-power';
import { legScheme } from './leg-scheme';
import { panelCurrent } from './panel-current';
import { shareSource } from './share-source';
import { usedPanels } from './used-panels';

const textbook: Source = { kind: 'source', text: 'any circuits textbook' };

/** Volts across a circuit at the low end of the supply's range, and panels of each type on one circuit. */
export function workCircuits(inputs: PowerInputs): Step[] {
  const { power } = inputs;
  const { lowestV } = legScheme(power);
  const factor = power.connection === 'leg-to-neutral' ? '' : power.supply.kind === 'wye' ? 'sqrt(3) * ' : '2 * ';
  const usableA = power.circuit.ratedA * power.circuit.usableShare;
  const common: Step[] = [
    {
      figure: 'panels a circuit',
      symbol: 'V',
      expression: `${factor}nominal * lowest`,
      numbers: { nominal: power.supply.legToNeutralV, lowest: power.supply.lowestShare },
      value: lowestV,
      unit: 'V',
      source: textbook,
    },
    {
      figure: 'panels a circuit',
      symbol: 'usable',
      expression: 'rated * share',
      numbers: { rated: power.circuit.ratedA, share: power.circuit.usableShare },
      value: usableA,
      unit: 'A',
      source: shareSource(power.circuit.usableShare),
    },
  ];
  const steps = usedPanels(inputs).flatMap((panel): Step[] => {
    const { currentA, panels } = panelCurrent(panel.id, inputs.panels, power.circuit, lowestV);
    const figure = `panels a circuit, ${panel.name}`;
    const current: Step = {
      figure,
      symbol: 'I',
      expression: 'W / (V * pf)',
      numbers: { W: panel.power.fullWhiteW, V: lowestV, pf: panel.power.powerFactor },
      value: currentA,
      unit: 'A',
      source: { kind: 'sheet', text: 'full white and power factor of the panel' },
    };
    if (currentA === 0) return [current];
    const chained = panel.power.chainA !== null;
    const count: Step = {
      figure,
      symbol: 'panels',
      expression: chained ? 'floor(min(usable, chain) / I + 1e-9)' : 'floor(usable / I + 1e-9)',
      numbers: { usable: usableA, I: currentA, ...(chained ? { chain: panel.power.chainA! } : {}) },
      value: panels,
      unit: 'count',
      source: { kind: 'practice', text: 'whole panels; the last term keeps exact multiples whole' },
    };
    return [current, count];
  });
  return inputs.surfaces.total === 0 ? [] : [...common, ...steps];
}
