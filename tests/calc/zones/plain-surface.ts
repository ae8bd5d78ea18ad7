import type { PlacedPanelType, SurfaceSet, SurfaceTable } from '../../../src/calc/surfaces/surface-table';

/** Rows of one type, from the floor up. */
export interface PlainBand {
  readonly type: PlacedPanelType;
  readonly rows: number;
}

export interface PlainSurface {
  readonly id?: string;
  readonly letter?: string;
  readonly kind?: 'wall' | 'ceiling';
  readonly columns: number;
  readonly bands: readonly PlainBand[];
  readonly baseMm?: number;
  /** True where a place holds no panel; columns and rows from 1. */
  readonly isHole?: (column: number, row: number) => boolean;
}

/** A square panel type; the demo of the trade facts has 216 pixels on 500 mm. */
export function plainType(pixels: number, sizeMm = 500, panelId = `p${pixels}`): PlacedPanelType {
  return {
    panelId,
    name: `Panel ${pixels}`,
    turnDeg: 0,
    widthMm: sizeMm,
    heightMm: sizeMm,
    depthMm: 80,
    pixelsWide: pixels,
    pixelsHigh: pixels,
  };
}

/** A flat surface laid out by hand: columns along +x, a column on the canvas as wide as its widest panel, top left first. */
export function plainSurface(form: PlainSurface): SurfaceTable {
  const { columns, bands, kind = 'wall', letter = 'A', baseMm = 0, isHole = () => false } = form;
  const typeOfRow = bands.flatMap(({ rows }, t) => new Array<number>(rows).fill(t));
  const types = bands.map(({ type }) => type);
  const rows = typeOfRow.length;
  const high = typeOfRow.map((t) => types[t]!.pixelsHigh);
  const columnPixels = Math.max(...types.map(({ pixelsWide }) => pixelsWide));
  const canvasHeight = high.reduce((sum, pixels) => sum + pixels, 0);
  const places: { column: number; row: number }[] = [];
  for (let column = 1; column <= columns; column++) {
    for (let row = 1; row <= rows; row++) if (!isHole(column, row)) places.push({ column, row });
  }
  const at = new Int32Array(columns * rows).fill(-1);
  places.forEach(({ column, row }, i) => {
    at[(column - 1) * rows + row - 1] = i;
  });
  const bottomMm = (row: number) =>
    typeOfRow.slice(0, row - 1).reduce((sum, t) => sum + types[t]!.heightMm, kind === 'wall' ? baseMm : 0);
  const below = (row: number) => high.slice(0, row).reduce((sum, pixels) => sum + pixels, 0);
  const each = <T>(value: (place: { column: number; row: number; type: PlacedPanelType }) => T) =>
    places.map(({ column, row }) => value({ column, row, type: types[typeOfRow[row - 1]!]! }));
  return {
    surfaceId: form.id ?? letter.toLowerCase(),
    letter,
    name: `Surface ${letter}`,
    kind,
    count: places.length,
    columns,
    rows,
    types,
    column: Uint16Array.from(each(({ column }) => column)),
    row: Uint16Array.from(each(({ row }) => row)),
    type: Uint8Array.from(places.map(({ row }) => typeOfRow[row - 1]!)),
    xMm: Float64Array.from(each(({ column, type }) => (column - 0.5) * type.widthMm)),
    yMm: Float64Array.from(each(({ row, type }) => (kind === 'wall' ? 0 : bottomMm(row) + type.heightMm / 2))),
    zMm: Float64Array.from(each(({ row, type }) => (kind === 'wall' ? bottomMm(row) + type.heightMm / 2 : 6000))),
    headingDeg: new Float64Array(places.length),
    canvasX: Uint32Array.from(each(({ column }) => (column - 1) * columnPixels)),
    canvasY: Uint32Array.from(each(({ row }) => canvasHeight - below(row))),
    canvasWidth: columns * columnPixels,
    canvasHeight,
    at,
  };
}

export function setOf(...surfaces: SurfaceTable[]): SurfaceSet {
  let total = 0;
  const offsets = surfaces.map(({ count }) => {
    total += count;
    return total - count;
  });
  return { surfaces, offsets, total };
}
