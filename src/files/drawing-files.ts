import type { SurfaceTable } from '../calc/surfaces/surface-table';
import { drawFromAbove } from '../sheets/draw-from-above';
import { drawUnrolled } from '../sheets/draw-unrolled';
import type { Drawing } from '../sheets/drawing';
import type { Format } from '../sheets/format';
import type { StageParts } from '../sheets/stage-parts';
import type { From } from '../sheets/unrolled-grid';
import { drawingToDxf } from './drawing-to-dxf';
import { drawingToSvg } from './drawing-to-svg';
import type { NamedFile } from './files-to-zip';

export type DrawingKind = 'dxf' | 'svg';

/** Drawings for other programs are lettered for paper at 1:50, where a panel of half a metre holds its number. */
const reduction = 50;
/** A surface is not cut into strips for another program; room above and below it for texts and home runs, 8 and 10 mm on paper. */
const wholeSurface = { count: 1, aboveMm: 8 * reduction, belowMm: 10 * reduction };

const writers: Readonly<Record<DrawingKind, (drawing: Drawing, reduction: number) => string>> = {
  dxf: drawingToDxf,
  svg: drawingToSvg,
};

/**
 * The stage from above and every surface laid flat, seen from both sides, one at a time; panels tinted by processor.
 * Names: 'from-above.dxf', 'A-unrolled-from-behind.dxf', 'A-unrolled-from-inside.dxf'; of a ceiling '-from-above' and
 * '-from-below'. Nothing where the plan has no panels.
 */
export function* drawingFiles(parts: StageParts, format: Format, kind: DrawingKind): Generator<NamedFile> {
  if (parts.surfaces.total === 0) return;
  const file = (name: string, drawing: Drawing): NamedFile => ({
    name: `${name}.${kind}`,
    bytes: new TextEncoder().encode(writers[kind](drawing, reduction)),
  });
  yield file('from-above', drawFromAbove(parts, 'processor', format));
  for (const table of parts.surfaces.surfaces) {
    for (const from of ['behind', 'inside'] as const) {
      const options = { surfaceId: table.surfaceId, from, tint: 'processor', strips: wholeSurface } as const;
      const drawn = drawUnrolled(parts, options, format);
      if (drawn !== null) yield file(`${table.letter}-unrolled-from-${side(table, from)}`, drawn.drawing);
    }
  }
}

function side({ kind }: SurfaceTable, from: From): string {
  if (kind === 'wall') return from;
  return from === 'inside' ? 'below' : 'above';
}
