import type { CeilingResult } from '../../src/calc/ceilings/ceiling-result';

const sideMm = 500;
const trimMm = 6_200;

/**
 * A round ceiling about the origin: the 500 mm panels whose centres lie inside the circle. Seen from below with plan +y up
 * column 1 is the left one, so unturned it has the greatest x.
 */
export function ceilingOf(diameterMm: number, turnDeg: number): CeilingResult {
  const size = Math.floor(diameterMm / sideMm);
  const turn = (turnDeg * Math.PI) / 180;
  const local = (column: number, row: number) => ({
    u: (column - (size + 1) / 2) * sideMm,
    v: (row - (size + 1) / 2) * sideMm,
  });
  const present: { column: number; row: number }[] = [];
  const at = new Int32Array(size * size).fill(-1);
  for (let column = 1; column <= size; column++) {
    for (let row = 1; row <= size; row++) {
      const { u, v } = local(column, row);
      if (Math.hypot(u, v) > diameterMm / 2) continue;
      at[(column - 1) * size + row - 1] = present.length;
      present.push({ column, row });
    }
  }
  const x = ({ column, row }: { column: number; row: number }) => {
    const { u, v } = local(column, row);
    return -u * Math.cos(turn) - v * Math.sin(turn);
  };
  const y = ({ column, row }: { column: number; row: number }) => {
    const { u, v } = local(column, row);
    return -u * Math.sin(turn) + v * Math.cos(turn);
  };
  return {
    ceilingId: 'ceiling-b',
    letter: 'B',
    name: 'Ceiling',
    table: {
      surfaceId: 'ceiling-b',
      letter: 'B',
      name: 'Ceiling',
      kind: 'ceiling',
      count: present.length,
      columns: size,
      rows: size,
      types: [
        {
          panelId: 'panel-b',
          name: 'Panel 500 coarse',
          turnDeg: 0,
          widthMm: sideMm,
          heightMm: sideMm,
          depthMm: 90,
          pixelsWide: 104,
          pixelsHigh: 104,
        },
      ],
      column: Uint16Array.from(present, (place) => place.column),
      row: Uint16Array.from(present, (place) => place.row),
      type: new Uint8Array(present.length),
      xMm: Float64Array.from(present, x),
      yMm: Float64Array.from(present, y),
      zMm: new Float64Array(present.length).fill(trimMm),
      headingDeg: new Float64Array(present.length).fill(turnDeg),
      canvasX: Uint32Array.from(present, ({ column }) => (column - 1) * 104),
      canvasY: Uint32Array.from(present, ({ row }) => (size - row) * 104),
      canvasWidth: size * 104,
      canvasHeight: size * 104,
      at,
    },
    firstLatticeColumn: 1,
    firstLatticeRow: 1,
    outlineMm: Array.from({ length: 72 }, (_, i) => ({
      xMm: (diameterMm / 2) * Math.cos((i * Math.PI) / 36),
      yMm: (diameterMm / 2) * Math.sin((i * Math.PI) / 36),
    })),
    areaM2: present.length * 0.25,
    pixels: present.length * 104 * 104,
    coverShare: null,
    gapLeastMm: null,
    gapGreatestMm: null,
  };
}
