import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawFromAbove } from '../../src/sheets/draw-from-above';
import { drawUnrolled } from '../../src/sheets/draw-unrolled';
import type { LabelSeries } from '../../src/sheets/drawing';
import { placeLabels } from '../../src/sheets/place-labels';
import type { LabelView } from '../../src/sheets/text-box';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const view: LabelView = {
  scale: 0.1,
  leftMm: 0,
  topMm: 0,
  widthPx: 400,
  heightPx: 300,
  sizes: { small: 10, normal: 12, large: 14 },
};
const series = (texts: readonly string[], xMm: number, leastScale = 0): LabelSeries => ({
  layer: 'texts',
  pen: 'ink',
  size: 'small',
  leastScale,
  count: texts.length,
  at: (i) => ({ text: texts[i]!, xMm, yMm: 1000, asideX: 0, asideY: 0, gap: 0 }),
  numberOf: null,
});

describe('placeLabels', () => {
  it('lets the later of two texts that touch give way', () => {
    expect(placeLabels([series(['first'], 1000), series(['second'], 1100)], [], view).map((text) => text.text)).toEqual(
      ['first'],
    );
    expect(placeLabels([series(['first'], 1000), series(['second'], 2000)], [], view)).toHaveLength(2);
  });
  it('leaves out what would stand half outside the window, and what is too small to show', () => {
    expect(placeLabels([series(['edge'], 0)], [], view)).toEqual([]);
    expect(placeLabels([series(['later'], 1000, 0.2)], [], view)).toEqual([]);
  });
  it('says the short form where the whole text would stand out of the window', () => {
    const reach = series(['reach 2.10 m'], 3700);
    const withShort: LabelSeries = { ...reach, at: (i) => ({ ...reach.at(i), short: 'reach', asideX: 1 }) };
    // From 370 px the whole text of 72 px does not fit into 400, nor does 'reach' of 30; at 360 px the short one does.
    expect(placeLabels([withShort], [], view)).toEqual([]);
    const nearer: LabelSeries = { ...withShort, at: (i) => ({ ...withShort.at(i), xMm: 3600 }) };
    expect(placeLabels([nearer], [], view).map((text) => text.text)).toEqual(['reach']);
  });
  it('puts the text of a dimension first, in the middle of what shows, above a level line and turned beside an upright one', () => {
    const level = { x1Mm: 500, y1Mm: 1000, x2Mm: 9000, y2Mm: 1000, text: '8.5 m' };
    const [text] = placeLabels([series(['gives way'], 2250)], [level], view);
    // Visible from 500 to 4000 mm: 225 px; the line lies at 100 px.
    expect(text!.x + text!.width / 2).toBeCloseTo(225, 9);
    expect(text!.y + text!.height).toBeLessThan(100);
    const [turned] = placeLabels([], [{ x1Mm: 2000, y1Mm: 500, x2Mm: 2000, y2Mm: 1500, text: '1 m' }], view);
    expect(turned).toMatchObject({ turned: true });
    expect(turned!.x + turned!.width).toBeLessThan(200);
  });
  it('never lets two texts of a stage touch, at any zoom and place, in either drawing', () => {
    const parts = stageFixture({ columns: 40, rows: 9, jointDeg: 5, ceilingDiameterMm: 4000, zoneColumns: 7 });
    const format = (mm: number) => `${Math.round(mm)} mm`;
    const strips = { count: 2, aboveMm: 1500, belowMm: 1800 };
    const unrolled = drawUnrolled(
      parts,
      { surfaceId: 'wall-a', from: 'behind', tint: 'none', strips },
      format,
    )!.drawing;
    const above = drawFromAbove(parts, 'none', format);
    fc.assert(
      fc.property(
        fc.constantFrom(unrolled, above),
        fc.double({ min: 0.005, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (drawing, scale, right, down) => {
          const { box } = drawing;
          const texts = placeLabels(drawing.labels, drawing.dimensions, {
            ...view,
            scale,
            leftMm: box.leftMm + right * (box.rightMm - box.leftMm) - 200 / scale,
            topMm: box.topMm + down * (box.bottomMm - box.topMm) - 150 / scale,
          });
          texts.forEach((a, i) => {
            for (const b of texts.slice(i + 1)) {
              const touch = a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
              if (touch) throw new Error(`${a.text} touches ${b.text}`);
            }
            if (a.x < 0 || a.y < 0 || a.x + a.width > 400 || a.y + a.height > 300) throw new Error(`${a.text} outside`);
          });
        },
      ),
    );
  });
});
