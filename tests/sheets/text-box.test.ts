import { describe, expect, it } from 'vitest';
import type { Label } from '../../src/sheets/drawing';
import { fitsItsLine, type LabelView, textBox } from '../../src/sheets/text-box';

const view: LabelView = {
  scale: 0.1,
  leftMm: 0,
  topMm: 0,
  widthPx: 400,
  heightPx: 300,
  sizes: { small: 10, normal: 12, large: 14 },
};
const label: Label = { text: '', xMm: 1000, yMm: 1000, asideX: 0, asideY: 0, gap: 0 };

describe('textBox', () => {
  it('centres a text on its point: a sign is 0.6 of the height wide, a rim of 0.18 at both ends, a line 1.2 high', () => {
    expect(textBox(label, 'C12', 'small', view)).toEqual({ x: 100 - 10.8, y: 94, width: 21.6, height: 12 });
  });
  it('sets a text aside by its own half and the gap', () => {
    const box = textBox({ ...label, asideX: 1, gap: 0.5 }, 'C12', 'small', view)!;
    expect(box.x).toBeCloseTo(105, 9);
    const above = textBox({ ...label, asideY: -1, gap: 0.5 }, 'C12', 'small', view)!;
    expect(above.y + above.height).toBeCloseTo(95, 9);
  });
  it('turns a text on its side', () => {
    const box = textBox({ ...label, turned: true }, 'C12', 'small', view)!;
    expect([box.width, box.height]).toEqual([12, 21.6]);
  });
  it('keeps a text that belongs to a line on the visible part of it', () => {
    const along: Label = { ...label, xMm: -9000, to: { xMm: 9000, yMm: 1000, at: 'middle' } };
    // Visible from 0 to 4000: the middle is at 2000 mm, 200 px.
    const box = textBox(along, 'C12', 'small', view)!;
    expect(box.x + box.width / 2).toBeCloseTo(200, 9);
  });
  it('keeps the start of such a line in the window', () => {
    const row: Label = { ...label, xMm: -9000, asideX: -1, to: { xMm: 9000, yMm: 1000, at: 'start' } };
    expect(textBox(row, 'R1', 'small', view)!.x).toBe(4);
  });
  it('is null where the line does not show', () => {
    expect(textBox({ ...label, xMm: -9000, to: { xMm: -100, yMm: 0, at: 'start' } }, 'R1', 'small', view)).toBeNull();
    expect(textBox({ ...label, yMm: 9000, to: { xMm: 0, yMm: 9000, at: 'middle' } }, 'R1', 'small', view)).toBeNull();
  });
});

describe('fitsItsLine', () => {
  it('compares a centred text with what shows of its line', () => {
    const zone: Label = { ...label, xMm: 0, to: { xMm: 600, yMm: 1000, at: 'middle' } };
    // 60 px hold 'P1 P2 P3 P' (10 signs of 6 px) and no more.
    expect([fitsItsLine(zone, 'P1 P2 P3 P', 'small', view), fitsItsLine(zone, 'P1 P2 P3 P4', 'small', view)]).toEqual([
      true,
      false,
    ]);
    const halfHidden: Label = { ...zone, xMm: -300, to: { xMm: 300, yMm: 1000, at: 'middle' } };
    expect(fitsItsLine(halfHidden, 'P1 P2 P', 'small', view)).toBe(false);
  });
  it('asks nothing of texts that are not centred on a line', () => {
    expect(fitsItsLine(label, 'as long as it likes to be, and longer', 'large', view)).toBe(true);
  });
});
