import type { Heat } from '../../plan/site';
import type { Wish } from '../../plan/wish';
import type { PowerLoad } from '../power/power-result';
import { peopleHeat } from '../tables/people-heat';
import { airFlowM3PerS } from './air-flow';
import { wattsToBtuh, wattsToTons } from './cooling-units';
import type { HeatResults } from './heat-result';
import { hallVolumeM3, warmUpMin } from './warm-up';

export interface HeatInputs {
  readonly heat: Heat;
  readonly hall: Wish['hall'];
  readonly loads: readonly PowerLoad[];
  /** Letter of each surface by its id. */
  readonly letters: ReadonlyMap<string, string>;
  /** Processors, breakouts and nodes. */
  readonly signalW: number;
}

/** Heat of everything in the room: all electric power becomes heat, wherever it is fed from; lamps and people are added. */
export function computeHeat({ heat, hall, loads, letters, signalW }: HeatInputs): HeatResults {
  const steady = (name: string, watts: number) => ({ name, fullWhiteW: watts, typicalW: watts });
  const bySource = [
    ...loads.map(({ surfaceId, fullWhiteW, typicalW }) => ({
      name: `Panels of ${letters.get(surfaceId) ?? surfaceId}`,
      fullWhiteW,
      typicalW,
    })),
    steady('Processors, breakouts and nodes', signalW),
    steady('Lamps', heat.lampsW),
    steady('People', heat.people * peopleHeat.wattsAPerson),
  ];
  const fullWhiteW = bySource.reduce((sum, source) => sum + source.fullWhiteW, 0);
  return {
    fullWhiteW,
    typicalW: bySource.reduce((sum, source) => sum + source.typicalW, 0),
    fullWhiteBtuh: wattsToBtuh(fullWhiteW),
    fullWhiteTons: wattsToTons(fullWhiteW),
    airM3PerS: airFlowM3PerS(fullWhiteW, heat.airRiseK),
    warmUpMin: warmUpMin(fullWhiteW, hallVolumeM3(hall), heat.roomRiseK),
    bySource,
  };
}
