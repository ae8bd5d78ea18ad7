import { bandRows } from '../../plan/band-rows';
import type { Band } from '../../plan/wall';
import type { PanelShape } from '../panels/panel-views';
import { fromMicrometres, toMicrometres } from '../surfaces/micrometres';
import { placedPanelType } from '../surfaces/placed-panel-type';
import type { PlacedPanelType } from '../surfaces/surface-table';

/** The rows of a wall from the floor up, index 0 the lowest. */
export interface RowStack {
  readonly types: readonly PlacedPanelType[];
  /** Index into `types` of each row. */
  readonly type: Uint8Array;
  /** Lower edge of each row above the foot of the wall. */
  readonly lowerEdgeMm: Float64Array;
  /** Pixels of all rows below each row. */
  readonly pixelsBelow: Uint32Array;
  readonly heightMm: number;
  readonly pixelsHigh: number;
  readonly columnWidthMm: number;
  /** Width of a column on the canvas: that of its widest panel in pixels. */
  readonly pixelsWide: number;
  readonly depthMm: number;
  readonly unbevelledMm: number;
}

/** Stacks bands whose panels all are in `shapes`; the column is as wide as the first band's panel. */
export function stackBands(bands: readonly Band[], shapes: ReadonlyMap<string, PanelShape>): RowStack {
  const types: PlacedPanelType[] = [];
  const rows = bandRows(bands);
  const type = new Uint8Array(rows);
  const lowerEdgeMm = new Float64Array(rows);
  const pixelsBelow = new Uint32Array(rows);
  let row = 0;
  let heightUm = 0;
  let pixelsHigh = 0;
  let unbevelledMm = 0;
  for (const band of bands) {
    const shape = shapes.get(band.panelId)!;
    let index = types.findIndex((known) => known.panelId === band.panelId && known.turnDeg === band.turnDeg);
    if (index < 0) index = types.push(placedPanelType(shape, band.turnDeg)) - 1;
    const placed = types[index]!;
    if (!shape.size.bevelled) unbevelledMm = Math.max(unbevelledMm, placed.depthMm);
    const rowUm = toMicrometres(placed.heightMm);
    for (let r = 0; r < band.rows; r++, row++) {
      type[row] = index;
      lowerEdgeMm[row] = fromMicrometres(heightUm);
      pixelsBelow[row] = pixelsHigh;
      heightUm += rowUm;
      pixelsHigh += placed.pixelsHigh;
    }
  }
  return {
    types,
    type,
    lowerEdgeMm,
    pixelsBelow,
    heightMm: fromMicrometres(heightUm),
    pixelsHigh,
    columnWidthMm: types[0]!.widthMm,
    pixelsWide: Math.max(...types.map((placed) => placed.pixelsWide)),
    depthMm: Math.max(...types.map((placed) => placed.depthMm)),
    unbevelledMm,
  };
}
