import { memo } from 'react';
import type { Drawing, Fill, Stroke } from '../../sheets/drawing';
import type { Size, View } from './view';
import { visiblePath } from './visible-path';

interface ShapesProps {
  readonly drawing: Drawing;
  readonly view: View;
  readonly size: Size;
}

/** Fills, strokes and marks of a drawing in pixels of its window: one path for each, however many panels. */
export const Shapes = memo(function Shapes({ drawing, view, size }: ShapesProps) {
  const path = (item: Fill | Stroke, className: string, key: string) =>
    view.scale < item.leastScale ? null : (
      <path key={key} className={className} d={visiblePath(item.lines, view, size)} />
    );
  return (
    <>
      {drawing.fills.map((fill, i) => path(fill, fillClass(fill), `fill ${i}`))}
      {drawing.strokes.map((stroke, i) => path(stroke, strokeClass(stroke), `stroke ${i}`))}
      {drawing.marks.map((mark, i) => path(mark, fillClass(mark), `mark ${i}`))}
    </>
  );
});

function fillClass(fill: Fill): string {
  return typeof fill.paint === 'number' ? `sheet-fill tint-${fill.paint}` : `sheet-fill fill-${fill.paint}`;
}

function strokeClass(stroke: Stroke): string {
  return `sheet-line pen-${stroke.pen} weight-${stroke.weight} dash-${stroke.dash}`;
}
