import { describe, expect, it } from 'vitest';
import { drawUnrolled, type UnrolledOptions } from '../../src/sheets/draw-unrolled';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { lengthOf, polylines } from './polylines';

const format = (mm: number) => `${Math.round(mm)} mm`;
const options: UnrolledOptions = {
  surfaceId: 'wall-a',
  from: 'behind',
  tint: 'none',
  strips: { count: 1, aboveMm: 1000, belowMm: 1000 },
};
const parts = stageFixture({
  columns: 6,
  rows: 6,
  jointDeg: 2.5,
  zoneColumns: 3,
  baseMm: 200,
  ceilingDiameterMm: 3000,
});
const drawn = (change: Partial<UnrolledOptions> = {}) => drawUnrolled(parts, { ...options, ...change }, format)!;

describe('drawUnrolled', () => {
  it('gives the wall a heavy cut edge and a hairline grid', () => {
    const { strokes } = drawn().drawing;
    const edge = strokes.find((stroke) => stroke.layer === 'wall')!;
    expect([edge.weight, lengthOf(edge.lines)]).toEqual(['cut', 12_000]);
    const grid = strokes.find((stroke) => stroke.layer === 'grid')!;
    expect([grid.weight, lengthOf(grid.lines)]).toEqual(['hair', 2 * 5 * 3000]);
  });
  it('draws the floor under the wall and the reach above it, at their true heights', () => {
    const { strokes } = drawn().drawing;
    const y = (layer: string) => polylines(strokes.find((stroke) => stroke.layer === layer)!.lines)[0]![0]![1];
    // Top at 1000, 6 rows of 500 and 200 of base: the floor at 4200, 2100 of reach above it.
    expect([y('hall'), y('limits')]).toEqual([4200, 2100]);
  });
  it('begins no line of the site left of its box', () => {
    for (const from of ['behind', 'inside'] as const) {
      const { strokes, box } = drawn({ from }).drawing;
      for (const { layer, lines } of strokes.filter((stroke) => ['hall', 'limits'].includes(stroke.layer))) {
        for (const x of polylines(lines).flatMap((line) => line.map(([at]) => at!))) {
          expect(x, layer).toBeGreaterThanOrEqual(box.leftMm);
        }
      }
    }
  });
  it('measures the height of the wall and of its base', () => {
    expect(drawn().drawing.dimensions.map((dimension) => dimension.text)).toEqual(['3000 mm', '200 mm']);
  });
  it('says from which side it is seen, of walls and of ceilings', () => {
    expect(drawn().drawing.notes[0]).toMatch(/^seen from behind: left and right are as the crew sees them/);
    expect(drawn({ from: 'inside' }).drawing.notes[0]).toMatch(/inside/);
    expect(drawn({ surfaceId: 'ceiling-b', from: 'inside' }).drawing.notes[0]).toMatch(/below/);
    expect(drawn({ surfaceId: 'ceiling-b' }).drawing.notes[0]).toMatch(/above.*swapped/);
  });
  it('keeps the height clear of the tags where cables come from its side', () => {
    const right = (from: 'behind' | 'inside') => {
      const { drawing } = drawUnrolled(
        { ...parts, ceilingEntry: 'left' },
        { ...options, surfaceId: 'ceiling-b', from },
        format,
      )!;
      expect(drawing.box.rightMm).toBe(drawing.dimensions[0]!.x1Mm);
      return drawing.box.rightMm;
    };
    // Seen from above the left side of the view from below is on the right.
    expect(right('behind')).toBeGreaterThan(right('inside') + 1000);
  });
  it('draws neither floor nor reach at a ceiling', () => {
    const layers = drawn({ surfaceId: 'ceiling-b' }).drawing.strokes.map((stroke) => stroke.layer);
    expect(layers).not.toContain('limits');
    expect(layers).not.toContain('hall');
  });
  it('shows circuits in place of runs where panels are tinted by circuit or leg', () => {
    const tags = (tint: UnrolledOptions['tint']) => {
      const row = drawn({ tint }).drawing.labels.find((series) => series.layer === 'homeruns')!;
      return [row.at(0).text, row.at(0).short];
    };
    expect(tags('none')).toEqual(['1A-01', 'A-01']);
    expect(tags('circuit')).toEqual(['D1-1 L1', 'D1-1']);
    expect(tags('leg')).toEqual(['D1-1 L1', 'L1']);
    expect(drawn({ tint: 'leg' }).drawing.legend.map((entry) => entry.text)).toEqual(['L1', 'L2', 'L3']);
  });
  it('brings a ceiling its cables from the side that the plan names, swapped when seen from above', () => {
    const stubX = (from: 'inside' | 'behind') => {
      const left = drawUnrolled(
        { ...parts, ceilingEntry: 'left' },
        { ...options, surfaceId: 'ceiling-b', from },
        format,
      )!;
      return polylines(left.drawing.strokes.find((stroke) => stroke.layer === 'homeruns')!.lines)[0]![0]![0]!;
    };
    expect(stubX('inside')).toBeLessThan(0);
    expect(stubX('behind')).toBeGreaterThan(3000);
  });
  it('cuts strips at zone borders where it can', () => {
    expect(drawn({ strips: { ...options.strips, count: 2 } }).grid.strips.map((strip) => strip.firstColumn)).toEqual([
      4, 1,
    ]);
  });
  it('holds all its lines in its box', () => {
    const { box, strokes } = drawn({ strips: { ...options.strips, count: 2 } }).drawing;
    const wiring = strokes.filter((stroke) => !['hall', 'limits'].includes(stroke.layer));
    for (const { lines } of wiring) {
      for (let i = 0; i < lines.xyMm.length; i += 2) {
        expect(lines.xyMm[i]! >= box.leftMm && lines.xyMm[i]! <= box.rightMm).toBe(true);
        expect(lines.xyMm[i + 1]! >= box.topMm && lines.xyMm[i + 1]! <= box.bottomMm).toBe(true);
      }
    }
  });
  it('is null for a surface that is not there or has no panels', () => {
    expect(drawUnrolled(parts, { ...options, surfaceId: 'nowhere' }, format)).toBeNull();
    const empty = stageFixture({ columns: 1, rows: 1, jointDeg: 0, hole: { column: 1, row: 1, columns: 1, rows: 1 } });
    expect(drawUnrolled(empty, options, format)).toBeNull();
  });
  it('numbers the panels of the second surface behind those of the first', () => {
    expect(drawn({ surfaceId: 'ceiling-b' }).offset).toBe(36);
  });
  it('makes a handful of paths for 20,000 panels, in a fraction of a second', () => {
    const many = stageFixture({ columns: 1000, rows: 20, jointDeg: 0.34, splitAboveRow: 10 });
    const { drawing } = drawUnrolled(many, { ...options, tint: 'port' }, format)!;
    expect(drawing.fills.length + drawing.strokes.length + drawing.marks.length).toBeLessThan(20);
  });
});
