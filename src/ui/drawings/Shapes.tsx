import { memo } from 'react';
import type { Drawing, Fill, Stroke } from '../../sheets/drawing';
import { pathData } from './path-data';

interface ShapesProps {
  readonly drawing: Drawing;
  /** Scale rounded to the step from which on the same items show, so that a zoom seldom renders anew. */
  readonly scale: number;
}

/** Fills and strokes of a drawing: one path for each, however many panels. The caller sets the scale on a group round it. */
export const Shapes = memo(function Shapes({ drawing, scale }: ShapesProps) {
  return (
    <>
      <Fills fills={drawing.fills} scale={scale} />
      {drawing.strokes.map((stroke, i) =>
        scale < stroke.leastScale ? null : (
          // biome-ignore lint/suspicious/noArrayIndexKey: the items of one drawing keep their order
          <path key={i} className={strokeClass(stroke)} d={pathData(stroke.lines)} />
        ),
      )}
      <Fills fills={drawing.marks} scale={scale} />
    </>
  );
});

function Fills({ fills, scale }: { readonly fills: readonly Fill[]; readonly scale: number }) {
  return fills.map((fill, i) =>
    // biome-ignore lint/suspicious/noArrayIndexKey: the items of one drawing keep their order
    scale < fill.leastScale ? null : <path key={i} className={fillClass(fill)} d={pathData(fill.lines)} />,
  );
}

/** The greatest of the drawing's own thresholds that this scale reaches. */
export function thresholdOf(drawing: Drawing, scale: number): number {
  let reached = 0;
  for (const { leastScale } of [...drawing.fills, ...drawing.strokes, ...drawing.marks]) {
    if (leastScale <= scale && leastScale > reached) reached = leastScale;
  }
  return reached;
}

function fillClass(fill: Fill): string {
  return typeof fill.paint === 'number' ? `sheet-fill tint-${fill.paint}` : `sheet-fill fill-${fill.paint}`;
}

function strokeClass(stroke: Stroke): string {
  return `sheet-line pen-${stroke.pen} weight-${stroke.weight} dash-${stroke.dash}`;
}
