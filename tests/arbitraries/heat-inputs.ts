import type { HeatInputs } from '../../src/calc/heat/compute-heat';
import { computePower } from '../../src/calc/power/compute-power';
import { powerInputs } from './power-inputs';

/** 360 panels: 54 kW at full white, 23.76 kW typically; 4 kW of signal equipment, 2 kW of lamps, ten people; no hall. */
export function heatInputs(changes: Partial<HeatInputs> = {}): HeatInputs {
  const inputs = powerInputs({ signalLoadW: 4000 });
  return {
    heat: { people: 10, lampsW: 2000, airRiseK: 10, roomRiseK: 8 },
    hall: { lengthMm: null, widthMm: null, clearHeightMm: null, walkwayMm: 1200 },
    power: computePower(inputs),
    surfaces: inputs.surfaces,
    ...changes,
  };
}

export const statedHall = { lengthMm: 30_000, widthMm: 26_000, clearHeightMm: 10_000, walkwayMm: 1200 };
