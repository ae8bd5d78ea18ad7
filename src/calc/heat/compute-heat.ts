import type { Heat } from '../../plan/site';
import type { Wish } from '../../plan/wish';
import type { PowerResults } from '../power/power-result';
import { air } from '../tables/air';
import { btuhAWatt, heatUnits } from '../tables/heat-units';
import { peopleHeat } from '../tables/people-heat';
import type { HeatResults } from './heat-result';

export interface HeatInputs {
  readonly heat: Heat;
  readonly hall: Wish['hall'];
  readonly loads: PowerResults['loads'];
  readonly letters: ReadonlyMap<string, string>;
  /** Processors, breakouts and nodes. */
  readonly signalW: number;
}

/** Hall volume in m3; null unless length, width and clear height are stated. */
export function hallVolumeM3({ lengthMm, widthMm, clearHeightMm }: Wish['hall']): number | null {
  if (lengthMm === null || widthMm === null || clearHeightMm === null) return null;
  return (lengthMm / 1000) * (widthMm / 1000) * (clearHeightMm / 1000);
}

/** All electric power becomes heat; people and lamps add to it. Warm-up counts the hall's air only, so it is pessimistic. */
export function computeHeat({ heat, hall, loads, letters, signalW }: HeatInputs): HeatResults {
  const even = (name: string, watts: number) => ({ name, fullWhiteW: watts, typicalW: watts });
  const bySource = [
    ...loads.map(({ surfaceId, fullWhiteW, typicalW }) => ({
      name: `Panels of ${letters.get(surfaceId) ?? surfaceId}`,
      fullWhiteW,
      typicalW,
    })),
    even('Processors, breakouts and nodes', signalW),
    even('Lamps', heat.lampsW),
    even('People', heat.people * peopleHeat.wattsAPerson),
  ];
  const fullWhiteW = bySource.reduce((sum, source) => sum + source.fullWhiteW, 0);
  const typicalW = bySource.reduce((sum, source) => sum + source.typicalW, 0);
  const volumeM3 = hallVolumeM3(hall);
  const warm = volumeM3 !== null && fullWhiteW > 0;
  return {
    fullWhiteW,
    typicalW,
    fullWhiteBtuh: fullWhiteW * btuhAWatt,
    fullWhiteTons: (fullWhiteW * btuhAWatt) / heatUnits.btuhATon,
    airM3PerS: fullWhiteW / (air.densityKgPerM3 * air.heatJPerKgK * heat.airRiseK),
    warmUpMin: warm ? (air.densityKgPerM3 * air.heatJPerKgK * volumeM3 * heat.roomRiseK) / fullWhiteW / 60 : null,
    bySource,
  };
}
