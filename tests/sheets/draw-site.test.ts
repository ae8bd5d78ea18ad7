import { describe, expect, it } from 'vitest';
import { drawSite } from '../../src/sheets/draw-site';
import { findOpening } from '../../src/sheets/find-opening';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { polylines } from './polylines';

const format = (mm: number) => `${Math.round(mm)} mm`;
const opening = findOpening(stageFixture({ columns: 136, rows: 1, jointDeg: 2.5 }).walls)!;
const hall = { leftMm: -16_000, rightMm: 16_000, lowMm: -14_000, highMm: 14_000 };
const vehicle = { widthMm: 2550, heightMm: 4000 };

describe('drawSite', () => {
  it('draws the hall and measures its sides, away from the opening', () => {
    const { strokes, dimensions } = drawSite(hall, opening, vehicle, format);
    expect(polylines(strokes[0]!.lines)[0]).toEqual([
      [-16_000, -14_000],
      [16_000, -14_000],
      [16_000, 14_000],
      [-16_000, 14_000],
    ]);
    const [level, upright] = dimensions;
    expect(level!.text).toBe('hall 32000 mm');
    expect(level!.y1Mm).toBeLessThan(-14_000);
    expect(upright!.text).toBe('hall 28000 mm');
  });
  it('measures the opening between the two ends', () => {
    const opened = drawSite(null, opening, vehicle, format).dimensions[0]!;
    expect(opened.text).toBe('opening 3980 mm');
    expect(Math.hypot(opened.x2Mm - opened.x1Mm, opened.y2Mm - opened.y1Mm)).toBeCloseTo(3980.2, 0);
  });
  it('stands the vehicle before the opening, as wide as stated', () => {
    const { strokes, labels } = drawSite(null, opening, vehicle, format);
    const [body] = polylines(strokes[1]!.lines);
    const xs = body!.map(([x]) => x!);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(2550, 2);
    // Outside: below the opening's middle, which lies at plan y -11.3 m, so y +11.3 m of the drawing.
    expect(Math.min(...body!.map(([, y]) => y!))).toBeGreaterThan(11_400);
    expect(labels.at(0).text).toBe('2550 mm wide, 4000 mm high');
  });
  it('draws no vehicle whose width nobody stated, and says no height that nobody stated', () => {
    expect(drawSite(null, opening, { widthMm: null, heightMm: 4000 }, format).labels.count).toBe(0);
    expect(drawSite(null, opening, { widthMm: 2550, heightMm: null }, format).labels.at(0).text).toBe('2550 mm wide');
  });
  it('draws nothing where there is neither hall nor opening', () => {
    const { strokes, dimensions } = drawSite(null, null, vehicle, format);
    expect(strokes.every((stroke) => stroke.lines.ends.length === 0)).toBe(true);
    expect(dimensions).toEqual([]);
  });
});
