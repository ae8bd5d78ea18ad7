import { describe, expect, it } from 'vitest';
import { drawSite } from '../../src/sheets/draw-site';
import { findOpening } from '../../src/sheets/find-opening';
import { placeLabels } from '../../src/sheets/place-labels';
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
  it('writes the width of the opening inside, clear of the ends of the wall', () => {
    const { dimensions } = drawSite(null, opening, vehicle, format);
    // The opening is at the bottom of the plan, so inside is up: against y of the drawing.
    expect(dimensions[0]!.aside!.y).toBeLessThan(0);
    // On a phone 13 m take 180 px.
    const view = {
      scale: 0.014,
      leftMm: -13_000,
      topMm: -13_000,
      widthPx: 364,
      heightPx: 364,
      sizes: { small: 10, normal: 12, large: 16 },
    };
    const [text] = placeLabels([], dimensions, view as Parameters<typeof placeLabels>[2]);
    const rings = stageFixture({ columns: 136, rows: 1, jointDeg: 2.5 }).walls[0]!;
    for (let corner = 0; corner < rings.frontMm.length; corner += 2) {
      const x = (rings.frontMm[corner]! - view.leftMm) * view.scale;
      const y = (-rings.frontMm[corner + 1]! - view.topMm) * view.scale;
      const isUnder = x > text!.x && x < text!.x + text!.width && y > text!.y && y < text!.y + text!.height;
      expect(isUnder, `${x}, ${y}`).toBe(false);
    }
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
