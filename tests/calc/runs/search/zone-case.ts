import type { RunLimits, WiringGrid } from '../../../../src/calc/runs/wiring-grid';

/** Rows of one panel type, from the floor up. */
export interface BandOfPanels {
  readonly rows: number;
  readonly pixelsWide: number;
  readonly pixelsHigh: number;
  readonly heightMm: number;
}

/** A zone and its port as plain data: what a search is given, told so that an answer can be kept beside it. */
export interface ZoneCase {
  readonly columns: number;
  readonly bands: readonly BandOfPanels[];
  /** Places (`column * rows + row`) without a panel. */
  readonly holes: readonly number[];
  readonly usablePixels: number;
  readonly panelsMost: number;
  readonly counting: RunLimits['counting'];
  /** Null: no limit. */
  readonly reachMm: number | null;
  /** Whether runs return, so that both their ends obey reach. */
  readonly returns: boolean;
}

/** The grid of a case: narrower panels stand at the left edge of their column on the canvas, bands on one another. */
export function gridOfCase({ columns, bands, holes }: ZoneCase): WiringGrid {
  const ofRows = bands.flatMap((band) => Array<BandOfPanels>(band.rows).fill(band));
  const rows = ofRows.length;
  const columnPixels = Math.max(...bands.map((band) => band.pixelsWide));
  const canvasPixels = ofRows.reduce((sum, band) => sum + band.pixelsHigh, 0);
  let pixelsBelow = 0;
  let heightMm = 0;
  const stack = ofRows.map((band) => {
    pixelsBelow += band.pixelsHigh;
    heightMm += band.heightMm;
    return { top: canvasPixels - pixelsBelow, footMm: heightMm - band.heightMm };
  });
  const each = (figure: (column: number, row: number) => number) =>
    Array.from({ length: columns * rows }, (_, place) => figure(Math.floor(place / rows), place % rows));
  const isHole = new Set(holes);
  return {
    columns,
    rows,
    present: Uint8Array.from(each((column, row) => (isHole.has(column * rows + row) ? 0 : 1))),
    pixelLeft: Uint32Array.from(each((column) => column * columnPixels)),
    pixelTop: Uint32Array.from(each((_, row) => stack[row]!.top)),
    pixelWidth: Uint32Array.from(each((_, row) => ofRows[row]!.pixelsWide)),
    pixelHeight: Uint32Array.from(each((_, row) => ofRows[row]!.pixelsHigh)),
    entryHeightMm: Float64Array.from(each((_, row) => stack[row]!.footMm)),
    columnPitchMm: 500,
    rowPitchMm: heightMm / rows,
  };
}

export function limitsOfCase({ usablePixels, panelsMost, counting, reachMm, returns }: ZoneCase): RunLimits {
  const limits = { usablePixels, panelsMost, counting, reachMm: reachMm ?? Number.POSITIVE_INFINITY };
  return returns ? { ...limits, returns, lastObeysReach: true } : limits;
}
