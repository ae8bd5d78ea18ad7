import { expect, test } from 'vitest';
import { drawingExtent } from '../../src/sheets/drawing-extent';
import { LineBuilder } from '../../src/sheets/line-builder';
import { smallDrawing } from '../files/small-drawing';

test('drawingExtent goes round lines and dimensions', () => {
  // The square ends at 2500, its dimension runs at 2900.
  expect(drawingExtent(smallDrawing())).toEqual({ leftMm: 1000, topMm: 500, rightMm: 5000, bottomMm: 2900 });
});

test('drawingExtent goes round what leaves the box of the drawing, and round marks', () => {
  const lines = new LineBuilder().segment(-300, 600, 6000, 100).build();
  const drawing = smallDrawing();
  const wider = { ...drawing, marks: [{ layer: 'runs', paint: 'ink', leastScale: 0, lines } as const] };
  expect(drawingExtent(wider)).toEqual({ leftMm: -300, topMm: 100, rightMm: 6000, bottomMm: 2900 });
});

test('drawingExtent is the box where nothing is drawn', () => {
  const drawing = { ...smallDrawing(), fills: [], strokes: [], marks: [], dimensions: [] };
  expect(drawingExtent(drawing)).toEqual(drawing.box);
});
