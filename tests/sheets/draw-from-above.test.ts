import { describe, expect, it } from 'vitest';
import { drawFromAbove } from '../../src/sheets/draw-from-above';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const format = (mm: number) => `${Math.round(mm)} mm`;
const ring = { columns: 136, rows: 13, jointDeg: 2.5, ceilingDiameterMm: 16_000 };
const texts = (drawing: ReturnType<typeof drawFromAbove>) => drawing.dimensions.map((dimension) => dimension.text);

describe('drawFromAbove', () => {
  it('measures the hall, the opening and the circle inside', () => {
    // Inside over flats: 500 / tan 1.25 deg = 22 914.7 mm. Source: regular polygon, any handbook of mathematics.
    expect(texts(drawFromAbove(stageFixture(ring), 'none', format))).toEqual([
      'hall 32000 mm',
      'hall 28000 mm',
      'opening 3980 mm',
      'Ø 22915 mm inside',
    ]);
  });
  it('measures the walls themselves where no hall is stated', () => {
    const parts = stageFixture({ columns: 10, rows: 2, jointDeg: 0 });
    const bare = { ...parts, hall: { ...parts.hall, lengthMm: null } };
    expect(texts(drawFromAbove(bare, 'none', format))).toEqual(['5000 mm']);
  });
  it('measures walls that have no diameter in their hall too', () => {
    const flat = stageFixture({ columns: 8, rows: 4, jointDeg: 0 });
    // 8 columns of 500.
    expect(drawFromAbove(flat, 'none', format).dimensions.map(({ text }) => text)).toContain(format(4000));
  });
  it('says how wide the walkway behind a wall is', () => {
    expect(drawFromAbove(stageFixture(ring), 'none', format).notes.join()).toContain(`walkway of ${format(1200)}`);
    const parts = stageFixture(ring);
    const without = drawFromAbove({ ...parts, hall: { ...parts.hall, walkwayMm: 0 } }, 'none', format);
    expect(without.notes.join()).not.toContain('walkway');
  });
  it('holds every line and dimension in its box', () => {
    const { box, strokes, dimensions } = drawFromAbove(stageFixture(ring), 'processor', format);
    for (const { lines } of strokes) {
      for (let i = 0; i < lines.xyMm.length; i += 2) {
        expect(lines.xyMm[i]! >= box.leftMm && lines.xyMm[i]! <= box.rightMm).toBe(true);
        expect(lines.xyMm[i + 1]! >= box.topMm && lines.xyMm[i + 1]! <= box.bottomMm).toBe(true);
      }
    }
    for (const dimension of dimensions) expect(dimension.y1Mm).toBeGreaterThanOrEqual(box.topMm);
  });
  it('says from where it is seen, and that dashed lines hang overhead', () => {
    expect(drawFromAbove(stageFixture(ring), 'none', format).notes.join()).toMatch(/from above.*plan \+y.*dashed/);
    expect(drawFromAbove(stageFixture({ ...ring, columns: 9 }), 'none', format).title).toMatch(/from above/);
  });
  it('makes a handful of paths, however many panels', () => {
    const { fills, strokes } = drawFromAbove(
      stageFixture({ ...ring, columns: 720, jointDeg: 0.5 }),
      'processor',
      format,
    );
    expect(fills.length + strokes.length).toBeLessThan(24);
  });
  it('draws an empty plan in an empty box of a size', () => {
    const parts = stageFixture(ring);
    const empty = { ...parts, walls: [], ceilings: [], hall: { ...parts.hall, lengthMm: null } };
    const { box } = drawFromAbove(empty, 'none', format);
    expect(box.rightMm).toBeGreaterThan(box.leftMm);
    expect(Object.values(box).every(Number.isFinite)).toBe(true);
  });
});
