import { describe, expect, it } from 'vitest';
import { drawCeilingsFromAbove } from '../../src/sheets/ceilings-from-above';
import { ceilingOf } from '../arbitraries/ceiling-fixture';
import { lengthOf, polylines } from './polylines';

const format = (mm: number) => `${mm / 1000} m`;

describe('drawCeilingsFromAbove', () => {
  // Of the 16 places of 500 mm in a circle of 2 m the four corners (centres 1061 mm out) are left out: 12 panels.
  const ceiling = ceilingOf(2000, 0);
  const { strokes, labels } = drawCeilingsFromAbove([ceiling], format);
  it('draws the rim of its panels dashed and the grid between them', () => {
    expect(ceiling.table.count).toBe(12);
    const [grid, rim] = strokes;
    expect(rim!.dash).toBe('dashed');
    // The rim of the cross is as long as the square's: 4 x 2 m. Of 12 x 4 edges the rest are met twice: (48 - 16) / 2.
    expect(lengthOf(rim!.lines)).toBe(8000);
    expect(lengthOf(grid!.lines)).toBe(16 * 500);
  });
  it('lies about its place with plan y upwards, and turns with it', () => {
    const xs = [...strokes[1]!.lines.xyMm].filter((_, i) => i % 2 === 0);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([-1000, 1000]);
    const turned = drawCeilingsFromAbove([ceilingOf(2000, 45)], format).strokes[1]!;
    const ys = [...turned.lines.xyMm].filter((_, i) => i % 2 === 1);
    // Furthest of the turned cross: its corners at (1000, 500), 1118 mm out, at 45 - 26.57 deg of the axis: 1060.7.
    expect(Math.max(...ys)).toBeCloseTo(1060.66, 1);
  });
  it('draws the planned outline and says name and trim', () => {
    expect(polylines(strokes[2]!.lines)[0]).toHaveLength(72);
    expect(Math.hypot(labels.at(0).xMm, labels.at(0).yMm)).toBeLessThan(1e-6);
    expect(labels.at(0)).toMatchObject({ text: 'B Ceiling, trim 6.2 m', short: 'B Ceiling' });
  });
  it('draws nothing but the outline of a ceiling without panels', () => {
    const empty = { ...ceiling, table: { ...ceiling.table, count: 0 } };
    expect(drawCeilingsFromAbove([empty], format)).toMatchObject({
      strokes: [{ weight: 'fine' }],
      labels: { count: 0 },
    });
  });
});
