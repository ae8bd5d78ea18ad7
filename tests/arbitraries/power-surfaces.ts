import fc from 'fast-check';
import type { PanelPower } from '../../src/calc/panels/panel-views';
import type { PlacedPanelType, SurfaceSet, SurfaceTable } from '../../src/calc/surfaces/surface-table';
import type { Distro } from '../../src/plan/distro';
import type { Power } from '../../src/plan/power';

/** An invented panel of 500 x 500 mm, 150 W at full white. */
export function powerPanel(id: string, power: Partial<PanelPower['power']> = {}): PanelPower {
  return {
    id,
    name: `Panel ${id}`,
    size: { widthMm: 500, heightMm: 500, depthMm: 80, bevelled: false },
    power: {
      blackW: 30,
      typicalW: 50,
      fullWhiteW: 150,
      powerFactor: 0.95,
      lowestV: 100,
      highestV: 240,
      chainA: null,
      leakageMa: null,
      inrushA: null,
      ...power,
    },
  };
}

function placedType(panelId: string): PlacedPanelType {
  return {
    panelId,
    name: `Panel ${panelId}`,
    turnDeg: 0,
    widthMm: 500,
    heightMm: 500,
    depthMm: 80,
    pixelsWide: 200,
    pixelsHigh: 200,
  };
}

export interface SurfaceShape {
  readonly columns: number;
  readonly rows: number;
  readonly kind?: 'wall' | 'ceiling';
  readonly surfaceId?: string;
  readonly letter?: string;
  /** Panel id of each row from the floor; 'p' everywhere where it is left out. */
  readonly rowPanel?: (row: number) => string;
  /** Column and row from 1. */
  readonly holds?: (column: number, row: number) => boolean;
}

/** A flat surface of 500 mm panels along plan x, built by hand: nothing of src/calc takes part. */
export function surfaceOf(shape: SurfaceShape): SurfaceTable {
  const { columns, rows, kind = 'wall', rowPanel = () => 'p', holds = () => true } = shape;
  const ids = [...new Set(Array.from({ length: rows }, (_, r) => rowPanel(r + 1)))];
  const places: [number, number][] = [];
  for (let c = 1; c <= columns; c++) for (let r = 1; r <= rows; r++) if (holds(c, r)) places.push([c, r]);
  const at = new Int32Array(columns * rows).fill(-1);
  places.forEach(([c, r], i) => {
    at[(c - 1) * rows + r - 1] = i;
  });
  return {
    surfaceId: shape.surfaceId ?? 'wall-1',
    letter: shape.letter ?? 'A',
    name: 'Test surface',
    kind,
    count: places.length,
    columns,
    rows,
    types: ids.map(placedType),
    column: Uint16Array.from(places, ([c]) => c),
    row: Uint16Array.from(places, ([, r]) => r),
    type: Uint8Array.from(places, ([, r]) => ids.indexOf(rowPanel(r))),
    xMm: Float64Array.from(places, ([c]) => (c - 0.5) * 500),
    yMm: Float64Array.from(places, ([, r]) => (kind === 'wall' ? 0 : (r - 0.5) * 500)),
    zMm: Float64Array.from(places, ([, r]) => (kind === 'wall' ? (r - 0.5) * 500 : 6000)),
    headingDeg: new Float64Array(places.length),
    canvasX: Uint32Array.from(places, ([c]) => (c - 1) * 200),
    canvasY: Uint32Array.from(places, ([, r]) => (rows - r) * 200),
    canvasWidth: columns * 200,
    canvasHeight: rows * 200,
    at,
  };
}

export function surfaceSet(...surfaces: readonly SurfaceTable[]): SurfaceSet {
  let total = 0;
  const offsets = surfaces.map((surface) => {
    total += surface.count;
    return total - surface.count;
  });
  return { surfaces, offsets, total };
}

/** True inside a circle that touches the edges of a lattice of that many places each way. */
export function inCircle(across: number): (column: number, row: number) => boolean {
  return (c, r) => Math.hypot(c - 0.5 - across / 2, r - 0.5 - across / 2) <= across / 2;
}

/** 230/400 V, leg to neutral, 16 A circuits at 0.8, no distro. */
export function powerOf(changes: Partial<Power> = {}): Power {
  return {
    supply: { kind: 'wye', legToNeutralV: 230, lowestShare: 1 },
    connection: 'leg-to-neutral',
    circuit: { ratedA: 16, usableShare: 0.8 },
    distroId: null,
    servicePoints: [],
    typicalLevel: 0.3,
    brightnessShare: 1,
    includesSignal: false,
    ...changes,
  };
}

export function distroOf(changes: Partial<Distro> = {}): Distro {
  return {
    id: 'distro',
    name: 'Distro of 48',
    circuits: 48,
    legA: 400,
    massKg: 100,
    purchase: { price: 1000, leadDays: 5 },
    ...changes,
  };
}

/** Surfaces of up to 24 x 16 with a few rectangular holes, one or two panel types by row. */
export const surfaceSetArbitrary: fc.Arbitrary<SurfaceSet> = fc
  .array(
    fc.record({
      columns: fc.integer({ min: 1, max: 24 }),
      rows: fc.integer({ min: 1, max: 16 }),
      kind: fc.constantFrom('wall' as const, 'ceiling' as const),
      upperFrom: fc.integer({ min: 1, max: 20 }),
      holes: fc.array(
        fc.record({
          column: fc.integer({ min: 1, max: 24 }),
          row: fc.integer({ min: 1, max: 16 }),
          columns: fc.integer({ min: 1, max: 6 }),
          rows: fc.integer({ min: 1, max: 6 }),
        }),
        { maxLength: 4 },
      ),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .map((shapes) =>
    surfaceSet(
      ...shapes.map(({ holes, upperFrom, ...shape }, i) =>
        surfaceOf({
          ...shape,
          surfaceId: `surface-${i}`,
          letter: 'ABC'[i]!,
          rowPanel: (row) => (row >= upperFrom ? 'q' : 'p'),
          holds: (c, r) =>
            !holes.some((h) => c >= h.column && c < h.column + h.columns && r >= h.row && r < h.row + h.rows),
        }),
      ),
    ),
  );
