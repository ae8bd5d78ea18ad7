import type { Signal } from '../../plan/signal';
import type { SurfaceTable } from '../surfaces/surface-table';
import type { WiringGrid } from './wiring-grid';

/** A rectangle of a surface, columns and rows from 1. */
export interface Rectangle {
  readonly firstColumn: number;
  readonly columns: number;
  readonly firstRow: number;
  readonly rows: number;
}

/** A zone as the search sees it, and the surface's panel at each of its places (-1: none). */
export interface ZoneGrid {
  readonly grid: WiringGrid;
  readonly panels: Int32Array;
}

/**
 * Turns a rectangle of a surface so that the side from which it is wired is row 0: a wall from the floor, a ceiling from the
 * edge where its loom arrives (quarter and half turns, never mirrored). The canvas is counted from the zone's own corner, so
 * that zones of equal shape give equal grids.
 */
export function zoneGrid(table: SurfaceTable, zone: Rectangle, ceilingEntry: Signal['ceilingEntry']): ZoneGrid {
  const side = table.kind === 'wall' ? 'bottom' : ceilingEntry;
  const sideways = side === 'left' || side === 'right';
  const columns = sideways ? zone.rows : zone.columns;
  const rows = sideways ? zone.columns : zone.rows;
  const places = columns * rows;
  const panels = new Int32Array(places).fill(-1);
  for (let c = 0; c < columns; c++) {
    for (let r = 0; r < rows; r++) {
      const across = acrossOf(side, c, r, columns, rows);
      const up = upOf(side, c, r, columns, rows);
      panels[c * rows + r] = table.at[(zone.firstColumn - 1 + across) * table.rows + zone.firstRow - 1 + up]!;
    }
  }
  return { grid: measure(table, panels, columns, rows, sideways), panels };
}

type Side = Signal['ceilingEntry'];

function acrossOf(side: Side, c: number, r: number, columns: number, rows: number): number {
  if (side === 'bottom') return c;
  if (side === 'top') return columns - 1 - c;
  return side === 'left' ? r : rows - 1 - r;
}

function upOf(side: Side, c: number, r: number, columns: number, rows: number): number {
  if (side === 'bottom') return r;
  if (side === 'top') return rows - 1 - r;
  return side === 'left' ? columns - 1 - c : c;
}

function measure(
  table: SurfaceTable,
  panels: Int32Array,
  columns: number,
  rows: number,
  sideways: boolean,
): WiringGrid {
  const grid = {
    columns,
    rows,
    present: new Uint8Array(panels.length),
    pixelLeft: new Uint32Array(panels.length),
    pixelTop: new Uint32Array(panels.length),
    pixelWidth: new Uint32Array(panels.length),
    pixelHeight: new Uint32Array(panels.length),
    entryHeightMm: new Float64Array(panels.length),
  };
  let count = 0;
  let widthMm = 0;
  let heightMm = 0;
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  for (const panel of panels) {
    if (panel < 0) continue;
    left = Math.min(left, table.canvasX[panel]!);
    top = Math.min(top, table.canvasY[panel]!);
  }
  panels.forEach((panel, place) => {
    if (panel < 0) return;
    const type = table.types[table.type[panel]!]!;
    count++;
    widthMm += type.widthMm;
    heightMm += type.heightMm;
    grid.present[place] = 1;
    grid.pixelLeft[place] = table.canvasX[panel]! - left;
    grid.pixelTop[place] = table.canvasY[panel]! - top;
    grid.pixelWidth[place] = type.pixelsWide;
    grid.pixelHeight[place] = type.pixelsHigh;
    grid.entryHeightMm[place] = lowerEdgeMm(table, panel);
  });
  const meanMm = (sum: number) => (count > 0 ? sum / count : 0);
  return {
    ...grid,
    columnPitchMm: meanMm(sideways ? heightMm : widthMm),
    rowPitchMm: meanMm(sideways ? widthMm : heightMm),
  };
}

/** Height of a panel's lower edge above the floor, in whole micrometres; a ceiling's panels lie at their own height. */
export function lowerEdgeMm(table: SurfaceTable, panel: number): number {
  const z = table.zMm[panel]!;
  if (table.kind === 'ceiling') return z;
  return Math.round((z - table.types[table.type[panel]!]!.heightMm / 2) * 1000) / 1000;
}
