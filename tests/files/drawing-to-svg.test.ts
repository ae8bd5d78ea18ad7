import { describe, expect, it } from 'vitest';
import { drawingToSvg } from '../../src/files/drawing-to-svg';
import { polylines } from '../sheets/polylines';
import { pointsOfPath, readSvg } from './read-svg';
import { smallDrawing } from './small-drawing';
import { drawingsOfStage } from './stage-drawings-fixture';

describe.each(drawingsOfStage())('drawingToSvg of the stage %s', (_name, drawing) => {
  const elements = readSvg(drawingToSvg(drawing, 50));
  const paths = elements.filter(({ name }) => name === 'path');
  const shown = [...drawing.fills, ...drawing.strokes, ...drawing.marks].filter(({ lines }) => lines.ends.length > 0);

  it('has a path for each fill, stroke and mark, in their order and with all their points, and one for dimensions', () => {
    expect(paths.map(({ attributes }) => attributes.class)).toEqual([...shown.map(({ layer }) => layer), 'dimensions']);
    expect(paths.slice(0, -1).map(({ attributes }) => pointsOfPath(attributes.d!).length)).toEqual(
      shown.map(({ lines }) => lines.xyMm.length / 2),
    );
  });

  it('has everything inside, paths as far as the drawing reaches', () => {
    const [left, top, width, height] = elements[0]!.attributes.viewBox!.split(' ').map(Number);
    const points = paths.flatMap(({ attributes }) => pointsOfPath(attributes.d!));
    const drawn = shown.flatMap(({ lines }) => polylines(lines).flat());
    const written = paths.slice(0, -1).flatMap(({ attributes }) => pointsOfPath(attributes.d!));
    for (const of of [Math.min, Math.max]) {
      expect(of(...written.map(([x]) => x))).toBeCloseTo(of(...drawn.map(([x]) => x!)), 3);
      expect(of(...written.map(([, y]) => y))).toBeCloseTo(of(...drawn.map(([, y]) => y!)), 3);
    }
    const texts = elements.filter(({ name }) => name === 'text');
    expect(texts.length).toBeGreaterThan(4);
    const spots = texts.map(({ attributes }) => [Number(attributes.x), Number(attributes.y)] as const);
    for (const [x, y] of [...points, ...spots]) {
      expect(x >= left! && x <= left! + width! && y >= top! && y <= top! + height!).toBe(true);
    }
  });
});

describe('drawingToSvg', () => {
  const elements = readSvg(drawingToSvg(smallDrawing(), 50));
  const { attributes } = elements[0]!;
  const path = (layer: string, at = 0) =>
    elements.filter(({ name, attributes: of }) => name === 'path' && of.class === layer)[at]!.attributes;

  it('is as large on paper as its scale says', () => {
    const [, , width, height] = attributes.viewBox!.split(' ').map(Number);
    // Millimetres of the thing, 50 times as many as of the paper.
    expect(Number.parseFloat(attributes.width!)).toBeCloseTo(width! / 50, 3);
    expect(Number.parseFloat(attributes.height!)).toBeCloseTo(height! / 50, 3);
    expect([attributes.width, attributes.height].every((size) => size!.endsWith('mm'))).toBe(true);
    // Coordinates are those of the drawing, so 4 m stay 4000: 80 mm on paper.
    expect(path('wall', 1).d).toBe('M1000 500L5000 500L5000 2500L1000 2500Z');
  });

  it('draws lines as wide and dashed as on paper, in ink that black and white keeps', () => {
    // 0.7 mm and 0.35 mm on paper, dashes of 3 and gaps of 2.
    expect(path('wall', 1)).toMatchObject({ 'stroke-width': '35', stroke: '#000000', fill: 'none' });
    expect(path('limits')).toMatchObject({ 'stroke-width': '17.5', 'stroke-dasharray': '150 100' });
    expect(Object.keys(path('wall', 1))).not.toContain('stroke-dasharray');
  });

  it('leaves out what is not worth showing at its scale', () => {
    const layers = elements.map(({ attributes: of }) => of.class);
    expect(layers).not.toContain('grid');
    expect(layers).toContain('limits');
  });

  it('says title, scale and notes, and what each tint stands for', () => {
    const texts = elements.filter(({ name }) => name === 'text').map(({ text }) => text);
    expect(elements.find(({ name }) => name === 'title')!.text).toBe('Tom & "Ann" <stage> Ø ✓');
    expect(texts).toEqual(
      expect.arrayContaining(['Tom & "Ann" <stage> Ø ✓', '1:50; seen from behind', 'L1 & L2', '4000 mm']),
    );
  });

  it('turns what reads upwards', () => {
    const upright = elements.find(({ name, text }) => name === 'text' && text === 'upright')!.attributes;
    expect(upright.transform).toBe(`rotate(-90 ${upright.x} 1600)`);
    expect(elements.find(({ name }) => name === 'g')!.attributes['text-anchor']).toBe('middle');
  });

  it('is wide enough for a long title', () => {
    const long = 'A stage with a name that goes on and on'.repeat(5);
    const [root] = readSvg(drawingToSvg({ ...smallDrawing(), title: long }, 50));
    // 195 signs, each about 0.6 of 3.5 mm wide.
    expect(Number.parseFloat(root!.attributes.width!)).toBeGreaterThan(195 * 0.6 * 3.5);
  });

  it('gives the same bytes for the same drawing', () => {
    expect(drawingToSvg(smallDrawing(), 50)).toBe(drawingToSvg(smallDrawing(), 50));
  });
});
