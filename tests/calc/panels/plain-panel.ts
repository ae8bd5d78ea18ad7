import type { Panel } from '../../../src/plan/panel';

type Groups = { [Key in 'size' | 'pixels' | 'lock' | 'light' | 'data' | 'power' | 'purchase']?: Partial<Panel[Key]> };

/** An invented panel of 500 x 500 mm and 200 x 200 pixels; each group may be given in part. */
export function plainPanel(id = 'p1', groups: Groups & Pick<Partial<Panel>, 'name' | 'massKg'> = {}): Panel {
  return {
    id,
    name: groups.name ?? `Panel ${id}`,
    size: { widthMm: 500, heightMm: 500, depthMm: 80, bevelled: false, ...groups.size },
    pixels: { wide: 200, high: 200, ...groups.pixels },
    massKg: groups.massKg ?? 8,
    lock: { stepsDeg: [-5, -2.5, 0, 2.5, 5, 10], highestStackMm: 8000, longestHangMm: 6000, ...groups.lock },
    light: { refreshHz: 3840, refreshMode: 'locked', peakNits: 1200, ...groups.light },
    data: {
      chainPanels: null,
      passesUnpowered: false,
      drivenBy: [{ processorId: 'proc', portPixels: null }],
      ...groups.data,
    },
    power: {
      blackW: 30,
      typicalW: 60,
      fullWhiteW: 150,
      powerFactor: 0.95,
      lowestV: 100,
      highestV: 240,
      chainA: 16,
      leakageMa: 1,
      inrushA: 20,
      ...groups.power,
    },
    purchase: { price: 1000, perCase: 6, caseMassKg: 20, leadDays: 30, ...groups.purchase },
  };
}
