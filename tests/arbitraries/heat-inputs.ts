import type { HeatInputs } from '../../src/calc/heat/compute-heat';

/** A wall of 54 kW at full white and 23.76 kW typically, 4 kW of signal equipment, 2 kW of lamps, ten people; no hall. */
export function heatInputs(changes: Partial<HeatInputs> = {}): HeatInputs {
  return {
    heat: { people: 10, lampsW: 2000, airRiseK: 10, roomRiseK: 8 },
    hall: { lengthMm: null, widthMm: null, clearHeightMm: null, walkwayMm: 1200 },
    loads: [{ surfaceId: 'wall-1', blackW: 10_800, typicalW: 23_760, fullWhiteW: 54_000 }],
    letters: new Map([['wall-1', 'A']]),
    signalW: 4000,
    ...changes,
  };
}

export const statedHall = { lengthMm: 30_000, widthMm: 26_000, clearHeightMm: 10_000, walkwayMm: 1200 };
