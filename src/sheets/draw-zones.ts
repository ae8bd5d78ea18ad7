import type { Zone } from '../calc/zones/zone-result';
import type { Label, LabelSeries, Stroke } from './drawing';
import { traceEdges } from './trace-edges';
import { columnLeftMm, groundMm, rowTopMm, type UnrolledGrid } from './unrolled-grid';

/**
 * Borders between zones, drawn out above and below the surface, and the names of their processors: over the surface for
 * those that reach its top row, inside for those below them.
 */
export function drawZones(
  grid: UnrolledGrid,
  zones: readonly Zone[],
  zoneOf: Int32Array,
): { readonly strokes: readonly Stroke[]; readonly labels: readonly LabelSeries[] } {
  const borders = traceEdges(grid, (a, b) => a >= 0 && b >= 0 && zoneOf[a] !== zoneOf[b]);
  const above: Label[] = [];
  const inside: Label[] = [];
  for (const zone of zones) {
    const lastRow = Math.min(zone.firstRow + zone.rows - 1, grid.lastRow);
    if (zone.surfaceId !== grid.table.surfaceId || zone.firstRow > grid.lastRow || lastRow < grid.firstRow) continue;
    const reachesTop = zone.firstRow + zone.rows > grid.lastRow;
    for (const strip of grid.strips) {
      const first = Math.max(zone.firstColumn, strip.firstColumn);
      const last = Math.min(zone.firstColumn + zone.columns, strip.firstColumn + strip.columns) - 1;
      if (first > last) continue;
      const left = columnLeftMm(grid, strip, grid.from === 'inside' ? first : last);
      const right = left + (last - first + 1) * grid.columnWidthMm;
      const next = grid.from === 'inside' ? right : left;
      if (last === zone.firstColumn + zone.columns - 1 && last < grid.table.columns) {
        borders.segment(next, strip.topMm - grid.aboveMm * 0.8, next, strip.topMm);
        borders.segment(next, strip.footMm, next, groundMm(grid, strip) + grid.belowMm * 0.2);
      }
      const label = {
        text: `Processor ${zone.processor}`,
        short: `P${zone.processor}`,
        asideX: 0,
      };
      if (reachesTop) {
        const yMm = strip.topMm;
        above.push({
          ...label,
          xMm: left,
          yMm,
          to: { xMm: right, yMm, at: 'middle' },
          asideY: -1,
          gap: 1.4,
        });
      } else {
        const yMm = rowTopMm(grid, strip, lastRow);
        inside.push({ ...label, xMm: left, yMm, to: { xMm: right, yMm, at: 'middle' }, asideY: 1, gap: 0.3 });
      }
    }
  }
  const series = (labels: readonly Label[]): LabelSeries => ({
    layer: 'zones',
    pen: 'ink',
    size: 'large',
    leastScale: 0,
    count: labels.length,
    at: (i) => labels[i]!,
    numberOf: (i) => i,
  });
  return {
    strokes: [{ layer: 'zones', pen: 'ink', weight: 'cut', dash: 'solid', leastScale: 0, lines: borders.build() }],
    labels: [series(above), series(inside)],
  };
}
