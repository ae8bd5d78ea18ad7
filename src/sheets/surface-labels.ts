import type { SurfaceTable } from '../calc/surfaces/surface-table';
import type { EdgeSide } from './draw-home-runs';
import type { Label, LabelSeries } from './drawing';
import type { Format } from './format';
import { panelsInPart } from './panels-in-part';
import { columnLeftMm, groundMm, rowTopMm, type Strip, stripShowing, type UnrolledGrid } from './unrolled-grid';

/** Height of small lettering that a panel's name is laid out for, in pixels. */
const nameSizePx = 10;

/**
 * Names of columns above, of rows at the left (at the right where cables come from the left), of the reach line, and inside
 * each panel once it is large enough.
 */
export function surfaceLabels(
  grid: UnrolledGrid,
  side: EdgeSide,
  reachMm: number,
  format: Format,
): readonly LabelSeries[] {
  const isRight = side === 'left';
  const columns: Label[] = [];
  const columnNumbers: number[] = [];
  const rows: Label[] = [];
  const rowNumbers: number[] = [];
  const reach: Label[] = [];
  for (const strip of grid.strips) {
    for (let k = 0; k < strip.columns; k++) {
      const column = strip.firstColumn + k;
      const xMm = columnLeftMm(grid, strip, column) + grid.columnWidthMm / 2;
      columns.push({
        text: `C${column}`,
        short: `${column}`,
        xMm,
        yMm: strip.topMm,
        to: { xMm, yMm: strip.footMm, at: 'start' },
        asideX: 0,
        asideY: -1,
        gap: 0.3,
      });
      columnNumbers.push(column);
    }
    for (let row = grid.firstRow; row <= grid.lastRow; row++) {
      const yMm = (rowTopMm(grid, strip, row) + rowTopMm(grid, strip, row - 1)) / 2;
      rows.push({
        text: `R${row}`,
        short: `${row}`,
        xMm: isRight ? strip.widthMm : 0,
        yMm,
        to: { xMm: isRight ? 0 : strip.widthMm, yMm, at: 'start' },
        asideX: isRight ? 1 : -1,
        asideY: 0,
        gap: 0.4,
      });
      rowNumbers.push(row);
    }
    if (showsReach(grid, strip, reachMm)) {
      reach.push({
        text: `reach ${format(reachMm, 'mm')}`,
        short: 'reach',
        xMm: strip.widthMm + grid.aboveMm * 0.9,
        yMm: strip.zeroMm - reachMm,
        asideX: 1,
        asideY: 0,
        gap: 0.3,
      });
    }
  }
  return [
    series('limits', reach, null, { pen: 'limit', size: 'normal' }),
    series('texts', columns, (i) => columnNumbers[i]!, { pen: 'soft', size: 'small' }),
    series('texts', rows, (i) => rowNumbers[i]!, { pen: 'soft', size: 'small' }),
    panelNames(grid),
  ];
}

function series(
  layer: LabelSeries['layer'],
  labels: readonly Label[],
  numberOf: LabelSeries['numberOf'],
  look: Pick<LabelSeries, 'pen' | 'size'>,
): LabelSeries {
  return { layer, ...look, leastScale: 0, count: labels.length, at: (i) => labels[i]!, numberOf };
}

/** Whether the height that an adult reaches crosses what a strip shows of a wall. */
export function showsReach(grid: UnrolledGrid, strip: Strip, reachMm: number): boolean {
  const y = strip.zeroMm - reachMm;
  return grid.table.kind === 'wall' && y > strip.topMm && y <= groundMm(grid, strip);
}

/** Width of a panel, in pixels, from which on it holds its name. */
export function nameWidthPx({ columns, rows }: Pick<SurfaceTable, 'columns' | 'rows'>): number {
  return (`C${columns} R${rows}`.length + 1.2) * 0.6 * nameSizePx;
}

/** Name of every panel that is shown in its upper left corner, from the scale at which the longest of them fits. */
function panelNames(grid: UnrolledGrid): LabelSeries {
  const { table } = grid;
  const name = (local: number) => `C${table.column[local]} R${table.row[local]}`;
  return {
    layer: 'texts',
    pen: 'soft',
    size: 'small',
    leastScale: nameWidthPx(table) / grid.columnWidthMm,
    count: table.count,
    at: (local) => {
      const strip = stripShowing(grid, local);
      return {
        text: strip === null ? '' : name(local),
        xMm: strip === null ? 0 : columnLeftMm(grid, strip, table.column[local]!) + grid.columnWidthMm / 2,
        yMm: strip === null ? 0 : rowTopMm(grid, strip, table.row[local]!),
        asideX: 0,
        asideY: 1,
        gap: 0.25,
      };
    },
    numberOf: null,
    near: (part) => panelsInPart(grid, part),
  };
}
