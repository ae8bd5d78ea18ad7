import type { Source, Step } from '../chapter';
import { countByPanel } from '../surfaces/count-by-type';
import type { PowerInputs } from './compute-power';
import type { PowerResults } from './power-result';
import { usedPanels } from './used-panels';

const sheet: Source = { kind: 'sheet', text: 'watts of the panel at black and at full white' };

/** Watts at full white, at the typical level and at black, signal equipment included. */
export function workLoads(inputs: PowerInputs, results: PowerResults): Step[] {
  const counts = countByPanel(inputs.surfaces);
  const used = usedPanels(inputs);
  const numbers: Record<string, number> = { signal: results.signalW };
  used.forEach((panel, i) => {
    numbers[`n${i + 1}`] = counts.get(panel.id)!;
    numbers[`white${i + 1}`] = panel.power.fullWhiteW;
    numbers[`black${i + 1}`] = panel.power.blackW;
  });
  const sum = (term: (i: number) => string) => [...used.map((_, i) => term(i + 1)), 'signal'].join(' + ');
  const only = (...names: string[]) =>
    Object.fromEntries(Object.entries(numbers).filter(([name]) => names.some((n) => name.startsWith(n))));
  return [
    {
      figure: 'power at full white',
      symbol: 'P',
      expression: sum((i) => `n${i} * white${i}`),
      numbers: only('n', 'white', 'signal'),
      value: results.maxW,
      unit: 'W',
      source: sheet,
    },
    {
      figure: 'typical power',
      symbol: 'P',
      expression: sum((i) => `n${i} * (black${i} + level * brightness * (white${i} - black${i}))`),
      numbers: {
        ...numbers,
        level: inputs.power.typicalLevel,
        brightness: inputs.power.brightnessShare,
      },
      value: results.typicalW,
      unit: 'W',
      source: { kind: 'practice', text: 'watts grow evenly with picture level and brightness' },
    },
    {
      figure: 'power at black',
      symbol: 'P',
      expression: sum((i) => `n${i} * black${i}`),
      numbers: only('n', 'black', 'signal'),
      value: results.blackW,
      unit: 'W',
      source: sheet,
    },
  ];
}
