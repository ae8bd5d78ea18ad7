import type { PanelData } from '../../../src/calc/panels/panel-views';
import type { Breakout } from '../../../src/plan/breakout';
import type { Mode } from '../../../src/plan/picture';
import type { BitDepth } from '../../../src/plan/primitives';
import type { Processor } from '../../../src/plan/processor';
import type { Signal } from '../../../src/plan/signal';

export const mode = (frames: number, depthBits: BitDepth = 8, pictures = 1, seconds = 1): Mode => ({
  rate: { frames, seconds },
  depthBits,
  pictures,
});

/** An invented panel of so many pixels square whose sheet names processor `proc`. */
export function plainPanel(pixels: number, data: Partial<PanelData['data']> = {}): PanelData {
  return {
    id: `p${pixels}`,
    name: `Panel ${pixels}`,
    pixels: { wide: pixels, high: pixels },
    light: { refreshHz: 3840, refreshMode: 'fixed', peakNits: 1200 },
    data: {
      chainPanels: null,
      passesUnpowered: false,
      drivenBy: [{ processorId: 'proc', portPixels: null }],
      ...data,
    },
  };
}

/** An invented processor with two breakouts of ten gigabit ports, 650,000 pixels a port by its sheet, carriage packed. */
export function plainProcessor(port: Partial<Processor['port']> = {}, rest: Partial<Processor> = {}): Processor {
  return {
    id: 'proc',
    name: 'Processor',
    canvas: { pixels: 8_900_000, widest: 8192, highest: 8192, inputGbps: null },
    port: {
      lineMbps: 1000,
      sheetPixels: 650_000,
      lowestRateHz: 60,
      carriageBits: { at8: 24, at10: 30, at12: 36 },
      counting: 'panels',
      ...port,
    },
    outlets: { kind: 'breakouts', breakoutId: 'box', most: 2 },
    powerW: 300,
    massKg: 12,
    rackUnits: 2,
    purchase: { price: null, leadDays: null },
    ...rest,
  };
}

export function plainBreakout(rest: Partial<Breakout> = {}): Breakout {
  return {
    id: 'box',
    name: 'Breakout',
    ports: 10,
    trunkMbps: 10_000,
    powerW: 40,
    massKg: 3,
    rackUnits: 1,
    purchase: { price: null, leadDays: null },
    ...rest,
  };
}

export function plainSignal(rest: Partial<Signal> = {}): Signal {
  return {
    processorId: 'proc',
    nodeId: null,
    bySurface: [],
    freeShare: 0.1,
    panelsMost: null,
    reachMm: 2100,
    priority: 'repeats',
    returns: 'none',
    ceilingEntry: 'bottom',
    ...rest,
  };
}
