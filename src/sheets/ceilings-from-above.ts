import type { CeilingResult } from '../calc/ceilings/ceiling-result';
import type { LabelSeries, Stroke } from './drawing';
import type { Format } from './format';
import { latticeFrame } from './lattice-frame';
import { LineBuilder } from './line-builder';
import { mapLines } from './map-lines';
import { traceEdges } from './trace-edges';
import { layOutUnrolled } from './unrolled-grid';

/** Ceilings in plan: outline dashed since it hangs above, the grid of panels, name and trim. */
export function drawCeilingsFromAbove(
  ceilings: readonly CeilingResult[],
  format: Format,
): { readonly strokes: readonly Stroke[]; readonly labels: LabelSeries } {
  const outlines = new LineBuilder();
  const strokes: Stroke[] = [];
  const names: { text: string; short: string; xMm: number; yMm: number }[] = [];
  for (const { table, outlineMm } of ceilings) {
    outlineMm.forEach((point, i) => {
      if (i === 0) outlines.moveTo(point.xMm, -point.yMm);
      else outlines.lineTo(point.xMm, -point.yMm);
    });
    const frame = latticeFrame(table);
    if (frame === null) continue;
    const grid = layOutUnrolled(table, 'inside', [{ firstColumn: 1, columns: table.columns }], {
      aboveMm: 0,
      belowMm: 0,
    });
    const zero = grid.strips[0]!.zeroMm;
    const toPlan = (x: number, y: number) =>
      [
        frame.originXMm + x * frame.columnX + (zero - y) * frame.rowX,
        -(frame.originYMm + x * frame.columnY + (zero - y) * frame.rowY),
      ] as const;
    const lines = (differs: (a: number, b: number) => boolean) => mapLines(traceEdges(grid, differs).build(), toPlan);
    strokes.push(
      {
        layer: 'ceiling',
        pen: 'faint',
        weight: 'hair',
        dash: 'solid',
        leastScale: 4 / frame.columnWidthMm,
        lines: lines((a, b) => a >= 0 && b >= 0),
      },
      {
        layer: 'ceiling',
        pen: 'ink',
        weight: 'medium',
        dash: 'dashed',
        leastScale: 0,
        lines: lines((a, b) => a < 0 !== b < 0),
      },
    );
    const name = table.name === '' ? table.letter : `${table.letter} ${table.name}`;
    const [xMm, yMm] = toPlan((table.columns * frame.columnWidthMm) / 2, zero - (table.rows * frame.rowHeightMm) / 2);
    names.push({ text: `${name}, trim ${format(table.zMm[0]!, 'mm')}`, short: name, xMm, yMm });
  }
  const outline = { layer: 'ceiling', pen: 'soft', weight: 'fine', dash: 'chain', leastScale: 0 } as const;
  return {
    strokes: [...strokes, { ...outline, lines: outlines.build(true) }],
    labels: {
      layer: 'texts',
      pen: 'ink',
      size: 'normal',
      leastScale: 0,
      count: names.length,
      at: (i) => ({ ...names[i]!, asideX: 0, asideY: 1, gap: 0.6 }),
      numberOf: (i) => i,
    },
  };
}
