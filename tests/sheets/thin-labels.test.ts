import { describe, expect, it } from 'vitest';
import type { LabelSeries } from '../../src/sheets/drawing';
import type { LabelView } from '../../src/sheets/text-box';
import { thinLabels } from '../../src/sheets/thin-labels';

/** Columns C1 to C100, 500 mm each. */
const columns: LabelSeries = {
  layer: 'texts',
  pen: 'soft',
  size: 'small',
  leastScale: 0,
  count: 100,
  at: (i) => ({ text: `C${i + 1}`, short: `${i + 1}`, xMm: 500 * i, yMm: 0, asideX: 0, asideY: 0, gap: 0 }),
  numberOf: (i) => i + 1,
};
const viewAt = (pxAColumn: number): LabelView => ({
  scale: pxAColumn / 500,
  leftMm: 0,
  topMm: 0,
  widthPx: 500,
  heightPx: 500,
  sizes: { small: 10, normal: 12, large: 14 },
});

describe('thinLabels', () => {
  // 'C99' is 18 px wide and 3.6 px of air, 21.6; '99' 15.6; 'C100' alone may touch.
  it.each([
    [22, 1, false],
    [16, 1, true],
    [11, 2, false],
    [8, 2, true],
    [5, 5, false],
    [2.3, 10, false],
    [0.3, 100, false],
  ])('at %f px a column keeps every %i., short: %s', (px, step, short) => {
    expect(thinLabels(columns, viewAt(px))).toEqual({ step, short });
  });
  it('thins no series without numbers', () => {
    expect(thinLabels({ ...columns, numberOf: null }, viewAt(0.1))).toEqual({ step: 1, short: false });
  });
  it('does not hang on where the window is', () => {
    const elsewhere = { ...viewAt(11), leftMm: 1e6, topMm: -1e6 };
    expect(thinLabels(columns, elsewhere)).toEqual({ step: 2, short: false });
  });
});
