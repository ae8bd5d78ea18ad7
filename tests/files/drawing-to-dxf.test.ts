import { describe, expect, it } from 'vitest';
import { drawingToDxf } from '../../src/files/drawing-to-dxf';
import type { Fill, Stroke } from '../../src/sheets/drawing';
import { polylines } from '../sheets/polylines';
import { countByLayer, readDxf } from './read-dxf';
import { smallDrawing } from './small-drawing';
import { drawingsOfStage } from './stage-drawings-fixture';

/** Polylines of a list of strokes or fills, by layer. */
function linesByLayer(items: readonly (Stroke | Fill)[]): Record<string, number> {
  return countByLayer(items.flatMap(({ layer, lines }) => polylines(lines).map(() => ({ layer }))));
}

describe.each(drawingsOfStage())('drawingToDxf of the stage %s', (_name, drawing) => {
  const read = readDxf(drawingToDxf(drawing, 50));

  it('has as many polylines and fills on each layer as the drawing', () => {
    expect(countByLayer(read.polylines)).toEqual(linesByLayer(drawing.strokes));
    const shown = [...drawing.fills, ...drawing.marks].filter(({ paint }) => paint !== 'sheet');
    expect(countByLayer(read.hatches)).toEqual(linesByLayer(shown));
    expect(read.lines.length).toBe(drawing.dimensions.length * 3);
    expect(read.polylines.length).toBeGreaterThan(3);
  });

  it('reaches as far as the drawing, y up', () => {
    const drawn = [...drawing.fills, ...drawing.strokes, ...drawing.marks].flatMap(({ lines }) =>
      polylines(lines).flat(),
    );
    const across = [...drawn.map(([x]) => x!), ...drawing.dimensions.flatMap(({ x1Mm, x2Mm }) => [x1Mm, x2Mm])];
    const down = [...drawn.map(([, y]) => y!), ...drawing.dimensions.flatMap(({ y1Mm, y2Mm }) => [y1Mm, y2Mm])];
    // Of a dimension's three lines the first is the dimension itself; the others are its ticks.
    const points = [
      ...read.polylines.flatMap(({ vertices }) => vertices),
      ...read.hatches.flatMap((hatch) => hatch.points),
      ...read.lines.filter((_, i) => i % 3 === 0).flatMap(({ vertices }) => vertices),
    ];
    const least = { x: Math.min(...points.map(({ x }) => x)), y: Math.min(...points.map(({ y }) => y)) };
    const most = { x: Math.max(...points.map(({ x }) => x)), y: Math.max(...points.map(({ y }) => y)) };
    expect(least.x).toBeCloseTo(Math.min(...across), 3);
    expect(most.x).toBeCloseTo(Math.max(...across), 3);
    expect(least.y).toBeCloseTo(-Math.max(...down), 3);
    expect(most.y).toBeCloseTo(-Math.min(...down), 3);
    expect(read.header.$EXTMIN).toMatchObject(least);
    expect(read.header.$EXTMAX).toMatchObject(most);
  });

  it('has texts of the drawing on their layers and its title', () => {
    const words = new Set(read.texts.map(({ text }) => text));
    for (const { text } of drawing.dimensions) expect(words).toContain(text);
    expect(words).toContain(drawing.title);
    const layers = new Set<string>([...drawing.labels.map(({ layer }) => layer), 'dimensions', 'texts']);
    for (const { layer } of read.texts) expect(layers).toContain(layer);
  });
});

describe('drawingToDxf', () => {
  const read = readDxf(drawingToDxf(smallDrawing(), 50));

  it('is in millimetres, in the form that holds Unicode', () => {
    // $INSUNITS 4: millimetres; AC1021: the first version whose files are UTF-8 (from memory).
    expect([read.header.$INSUNITS, read.header.$ACADVER, read.header.$MEASUREMENT]).toEqual([4, 'AC1021', 1]);
  });

  it('puts points where they are, y up, and closes what is closed', () => {
    const wall = read.polylines.find(({ layer }) => layer === 'wall')!;
    expect(wall.vertices.map(({ x, y }) => [x, y])).toEqual([
      [1000, -500],
      [5000, -500],
      [5000, -2500],
      [1000, -2500],
    ]);
    expect(wall.shape).toBe(true);
    expect(read.polylines.find(({ layer }) => layer === 'limits')!.shape).toBe(false);
  });

  it('leaves out only the fills that hide', () => {
    expect(countByLayer(read.hatches)).toEqual({ tint: 2, homeruns: 1 });
  });

  it('dashes what is dashed, as long as on paper at its scale', () => {
    const lineType = read.polylines.find(({ layer }) => layer === 'limits')!.lineType;
    // 3 mm of line and 2 mm of gap, 50 times as large.
    expect(read.lineTypes[lineType]!.pattern.map(Number)).toEqual([150, -100]);
  });

  it('writes names as they are, turned ones upwards, and as high as its scale asks', () => {
    const named = read.texts.find(({ layer }) => layer === 'zones')!;
    expect(named.text).toBe('Tom & "Ann" <stage> Ø ✓');
    // 2 mm letters at 1:50, of which the capitals are 0.7.
    expect([named.textHeight, named.rotation ?? 0]).toEqual([70, 0]);
    expect(read.texts.find(({ text }) => text === 'upright')!.rotation).toBe(90);
  });

  it('keeps a name on one line and its percent signs, so that no name breaks the file', () => {
    const texts = readDxf(drawingToDxf(smallDrawing('one\r\n0\nEOF 50%%u 5%'), 50)).texts.map(({ text }) => text);
    expect(texts).toContain('one 0 EOF 50%%%%%%u 5%');
  });

  it('gives the same bytes for the same drawing', () => {
    expect(drawingToDxf(smallDrawing(), 50)).toBe(drawingToDxf(smallDrawing(), 50));
  });
});
