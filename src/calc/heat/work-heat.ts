import type { Source, Step } from '../chapter';
import { air } from '../tables/air';
import { heatUnits } from '../tables/heat-units';
import { peopleHeat } from '../tables/people-heat';
import type { HeatInputs } from './compute-heat';
import type { HeatResults } from './heat-result';
import { hallVolumeM3 } from './warm-up';

const units: Source = { kind: 'source', text: heatUnits.source };
const airOnly: Source = { kind: 'source', text: `${air.source}; Q = P / (rho cp dT)`, fromMemory: true };

/** Heat in watts, full white in Btu/h and tons too, the air that carries it, and the warm-up of the hall's air. */
export function workHeat({ heat, hall, loads, signalW }: HeatInputs, results: HeatResults): Step[] {
  const panels = loads.reduce((sum, load) => sum + load.fullWhiteW, 0);
  const typicalPanels = loads.reduce((sum, load) => sum + load.typicalW, 0);
  const beside = { signal: signalW, lamps: heat.lampsW, people: heat.people, each: peopleHeat.wattsAPerson };
  const person: Source = { kind: 'source', text: peopleHeat.source, fromMemory: true };
  const watts = results.fullWhiteW;
  const { joulesABtu, btuhATon, secondsAnHour } = heatUnits;
  const density = air.densityKgPerM3;
  const capacity = air.heatJPerKgK;
  const volume = hallVolumeM3(hall);
  const steps: Step[] = [
    {
      figure: 'heat at full white',
      symbol: 'heat',
      expression: 'panels + signal + lamps + people * each',
      numbers: { panels, ...beside },
      value: watts,
      unit: 'W',
      source: person,
    },
    {
      figure: 'typical heat',
      symbol: 'heat',
      expression: 'panels + signal + lamps + people * each',
      numbers: { panels: typicalPanels, ...beside },
      value: results.typicalW,
      unit: 'W',
      source: person,
    },
    {
      figure: 'heat in Btu/h',
      symbol: 'btuh',
      expression: 'heat * hour / joules',
      numbers: { heat: watts, hour: secondsAnHour, joules: joulesABtu },
      value: results.fullWhiteBtuh,
      unit: 'btuh',
      source: units,
    },
    {
      figure: 'heat in tons of refrigeration',
      symbol: 'tons',
      expression: 'btuh / ton',
      numbers: { btuh: results.fullWhiteBtuh, ton: btuhATon },
      value: results.fullWhiteTons,
      unit: 'tons',
      source: units,
    },
    {
      figure: 'air to carry it',
      symbol: 'air',
      expression: 'heat / (density * capacity * rise)',
      numbers: { heat: watts, density, capacity, rise: heat.airRiseK },
      value: results.airM3PerS,
      unit: 'm3/s',
      source: airOnly,
    },
  ];
  if (results.warmUpMin === null || volume === null) return steps;
  return [
    ...steps,
    {
      figure: 'warm-up without cooling, air only',
      symbol: 'warmUp',
      expression: 'density * capacity * volume * rise / heat / 60',
      numbers: { density, capacity, volume, rise: heat.roomRiseK, heat: watts },
      value: results.warmUpMin,
      unit: 'min',
      source: airOnly,
    },
  ];
}
