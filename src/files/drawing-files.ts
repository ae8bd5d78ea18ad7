import type { Drawing } from '../sheets/drawing';
import type { Format } from '../sheets/format';
import { type ListedDrawing, listDrawings } from '../sheets/list-drawings';
import type { StageParts } from '../sheets/stage-parts';
import { drawingToDxf } from './drawing-to-dxf';
import { drawingToSvg } from './drawing-to-svg';
import type { NamedFile } from './files-to-zip';

export type DrawingKind = 'dxf' | 'svg';

/** Drawings for other programs are lettered for paper at 1:50, where a panel of half a metre holds its number. */
const reduction = 50;

const writers: Readonly<Record<DrawingKind, (drawing: Drawing, reduction: number) => string>> = {
  dxf: drawingToDxf,
  svg: drawingToSvg,
};

/** One of the drawings of a stage as a file: 'A-unrolled-from-behind.dxf'. */
export function drawingFile(listed: ListedDrawing, parts: StageParts, format: Format, kind: DrawingKind): NamedFile {
  const text = writers[kind](listed.draw(parts, format, reduction), reduction);
  return { name: `${listed.name}.${kind}`, bytes: new TextEncoder().encode(text) };
}

/** All drawings of a stage, one at a time; none where the plan has no panels. */
export function* drawingFiles(parts: StageParts, format: Format, kind: DrawingKind): Generator<NamedFile> {
  for (const listed of listDrawings(parts.surfaces)) yield drawingFile(listed, parts, format, kind);
}
