import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LineBuilder } from '../../../src/sheets/line-builder';
import { visiblePath } from '../../../src/ui/drawings/visible-path';

const size = { width: 400, height: 300 };
const view = { scale: 0.1, leftMm: 0, topMm: 0 };

describe('visiblePath', () => {
  it('writes what shows in pixels of the window', () => {
    const lines = new LineBuilder().moveTo(1000, 1000).lineTo(2000, 1000).lineTo(2000, 1555).build();
    expect(visiblePath(lines, view, size)).toBe('M100 100L200 100L200 155.5');
    expect(visiblePath(lines, { scale: 0.2, leftMm: 500, topMm: 0 }, size)).toBe('M100 200L300 200L300 311');
  });
  it('leaves out what does not show', () => {
    const lines = new LineBuilder().segment(9000, 0, 9000, 900).segment(100, 100, 200, 100).build();
    expect(visiblePath(lines, view, size)).toBe('M10 10L20 10');
  });
  it('clips a line that runs far out of the window, at both ends a little outside', () => {
    const lines = new LineBuilder().segment(-1e6, 1000, 1e6, 1000).build();
    const [, from, to] = /^M(-?[\d.]+) 100L(-?[\d.]+) 100$/.exec(visiblePath(lines, view, size))!.map(Number);
    expect(from).toBeLessThan(0);
    expect(from).toBeGreaterThan(-400);
    expect(to).toBe(440);
  });
  it('begins a clipped line at whole dashes from its true beginning, so that they do not crawl', () => {
    const lines = new LineBuilder().segment(-1e6, 1000, 1e6, 1000).build();
    for (const leftMm of [0, 37, 111, 2400]) {
      const start = Number(/^M(-?[\d.]+)/.exec(visiblePath(lines, { ...view, leftMm }, size))![1]);
      const along = start - (-1e6 - leftMm) * 0.1;
      expect(along % 240 < 0.2 || along % 240 > 239.8).toBe(true);
    }
  });
  it('closes what is closed', () => {
    const lines = new LineBuilder().rectangle(0, 0, 100, 100).build(true);
    expect(visiblePath(lines, view, size)).toBe('M0 0L10 0L10 10L0 10Z');
  });
  it('is empty for no lines', () => {
    expect(visiblePath(new LineBuilder().build(), view, size)).toBe('');
  });
  it('never writes a number that is none', () => {
    const coordinate = fc.integer({ min: -100_000, max: 100_000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate), { minLength: 1, maxLength: 6 }),
        fc.boolean(),
        (points, closed) => {
          const builder = new LineBuilder();
          points.forEach(([x, y], i) => void (i === 0 ? builder.moveTo(x, y) : builder.lineTo(x, y)));
          expect(visiblePath(builder.build(closed), view, size)).not.toMatch(/NaN|Infinity/);
        },
      ),
    );
  });
});
