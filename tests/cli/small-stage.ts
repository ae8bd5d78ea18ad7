import type { Check } from '../../src/calc/chapter';
import type { Headline } from '../../src/calc/evaluation';
import type { SurfaceTable } from '../../src/calc/surfaces/surface-table';
import type { Recorded } from '../../src/cli/check-record';

/** A wall of two columns and one row, wired as one run that begins at column 2, on one circuit that begins at column 1. */
const wall: SurfaceTable = {
  surfaceId: 'w',
  letter: 'A',
  name: 'Wall',
  kind: 'wall',
  count: 2,
  columns: 2,
  rows: 1,
  types: [
    {
      panelId: 'p',
      name: 'P',
      turnDeg: 0,
      widthMm: 500,
      heightMm: 500,
      depthMm: 80,
      pixelsWide: 100,
      pixelsHigh: 100,
    },
  ],
  column: Uint16Array.of(1, 2),
  row: Uint16Array.of(1, 1),
  type: Uint8Array.of(0, 0),
  xMm: Float64Array.of(-250, 250),
  yMm: Float64Array.of(0, 0),
  zMm: Float64Array.of(250, 250),
  headingDeg: Float64Array.of(0, 0),
  canvasX: Uint32Array.of(0, 100),
  canvasY: Uint32Array.of(0, 0),
  canvasWidth: 200,
  canvasHeight: 100,
  at: Int32Array.of(0, 1),
};

export const headline: Headline = {
  panels: 2,
  columns: 2,
  rows: 1,
  insideDiameterMm: null,
  openingMm: null,
  wallHeightMm: 500,
  pixels: 20_000,
  processors: 1,
  breakouts: 0,
  portsUsed: 1,
  portsLeast: 1,
  panelsPerPortMin: 2,
  panelsPerPortMax: 2,
  fullestPortShare: 0.0308,
  circuits: 1,
  worstLegA: 1.37,
  neutralA: 1.37,
  powerMaxW: 300,
  heatTons: 0.0853,
  massKg: 17,
  priceTotal: 4000,
};

const rest = { checks: [], working: [] };

export const smallStage: Recorded = {
  headline,
  checks: [],
  surfaces: { surfaces: [wall], offsets: [0], total: 2 },
  walls: { ...rest, results: { walls: [] } },
  ceilings: { ...rest, results: { ceilings: [] } },
  picture: {
    ...rest,
    results: {
      pixels: 20_000,
      rateBps: 0,
      surfaces: [
        {
          surfaceId: 'w',
          letter: 'A',
          pixels: 20_000,
          mode: { rate: { frames: 60, seconds: 1 }, depthBits: 8, pictures: 1 },
          served: [],
          rateBps: 0,
        },
      ],
    },
  },
  zones: {
    ...rest,
    results: {
      zones: [
        {
          surfaceId: 'w',
          letter: 'A',
          processor: 1,
          processorId: 'proc',
          firstColumn: 1,
          columns: 2,
          firstRow: 1,
          rows: 1,
          panels: 2,
          canvasWidth: 200,
          canvasHeight: 100,
          blankColumns: 0,
          breakouts: 0,
          ports: 1,
        },
      ],
      surfaces: [],
      processors: 1,
    },
  },
  runs: {
    ...rest,
    results: {
      runs: [
        {
          surfaceId: 'w',
          zone: 0,
          port: '1-01',
          start: 0,
          count: 2,
          pixels: 20_000,
          share: 0.0308,
          entryHeightMm: 0,
          inReach: true,
          returnPort: null,
          returnProcessor: null,
          exitHeightMm: 0,
        },
      ],
      order: Uint32Array.of(1, 0),
      runOf: Int32Array.of(0, 0),
      placeOf: Uint16Array.of(2, 1),
      surfaces: [],
      portsUsed: 1,
      portsLeast: 1,
      panelsPerPortMin: 2,
      panelsPerPortMax: 2,
      fullestPortShare: 0.0308,
      breakouts: 0,
      zones: [],
      existing: null,
      resting: [],
    },
  },
  power: {
    ...rest,
    results: {
      circuits: [
        {
          name: 'D1-01',
          distro: 1,
          surfaceId: 'w',
          leg: 'L1',
          start: 0,
          count: 2,
          watts: 300,
          currentA: 1.37,
          limitA: 12.8,
          entryHeightMm: 0,
        },
      ],
      order: Uint32Array.of(0, 1),
      circuitOf: Int32Array.of(0, 0),
      distros: [],
      points: [],
      legs: [
        { leg: 'L1', currentA: 1.37, limitA: 63 },
        { leg: 'N', currentA: 1.37, limitA: null },
      ],
      typicalLegs: [],
      worstLegA: 1.37,
      neutralA: 1.37,
      loads: [],
      signalW: 0,
      maxW: 300,
      typicalW: 100,
      blackW: 40,
      panelsACircuit: [],
    },
  },
};

/** A check as a chapter gives it, with what a test wants otherwise. */
export function checkOf(given: Partial<Check>): Check {
  return {
    id: 'runs.reach',
    chapter: 'runs',
    severity: 'stop',
    measured: 2500,
    limit: 2100,
    unit: 'mm',
    where: [{ kind: 'port', name: 'port 1-01' }],
    sentence: 'An entry stands at {measured}; a hand reaches {limit}.',
    ...given,
  };
}
