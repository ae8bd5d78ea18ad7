import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitView, moveView, toDrawing, zoomView } from '../../../src/ui/drawings/view';

const box = { leftMm: 0, topMm: 0, rightMm: 10_000, bottomMm: 5_000 };
const margins = { left: 50, right: 50, top: 10, bottom: 10 };
const size = { width: 600, height: 400 };

describe('fitView', () => {
  it('shows the whole box as large as the margins let it, in the middle', () => {
    // 500 px for 10 m across, 380 px for 5 m down: 0.05 px a mm; 250 px high, so 75 px above it.
    const view = fitView(box, size, margins);
    expect(view.scale).toBeCloseTo(0.05, 12);
    expect(view.leftMm).toBeCloseTo(-1000, 9);
    expect(view.topMm).toBeCloseTo(-1500, 9);
  });
  it('stays finite in a window that is smaller than its margins, and for a box without size', () => {
    const view = fitView({ leftMm: 5, topMm: 5, rightMm: 5, bottomMm: 5 }, { width: 1, height: 1 }, margins);
    expect([view.scale, view.leftMm, view.topMm].every(Number.isFinite)).toBe(true);
  });
});

describe('zoomView', () => {
  it('leaves the point under the pointer where it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 600, noNaN: true }),
        fc.double({ min: 0, max: 400, noNaN: true }),
        (factor, x, y) => {
          const view = fitView(box, size, margins);
          const before = toDrawing(view, x, y);
          const after = toDrawing(zoomView(view, factor, x, y, 0.001), x, y);
          expect(after.xMm).toBeCloseTo(before.xMm, 6);
          expect(after.yMm).toBeCloseTo(before.yMm, 6);
        },
      ),
    );
  });
  it('goes no farther than the least scale and no closer than 1 px a mm', () => {
    const view = fitView(box, size, margins);
    expect(zoomView(view, 1e-6, 0, 0, 0.02).scale).toBe(0.02);
    expect(zoomView(view, 1e6, 0, 0, 0.02).scale).toBe(1);
  });
});

describe('moveView', () => {
  it('moves the drawing with the pointer', () => {
    const view = fitView(box, size, margins);
    const moved = moveView(view, 20, -10, box, size);
    expect(moved.leftMm).toBeCloseTo(view.leftMm - 400, 9);
    expect(moved.topMm).toBeCloseTo(view.topMm + 200, 9);
  });
  it('always keeps some of the box in the window', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: -1e6, max: 1e6 }), (dx, dy) => {
        const { leftMm, topMm, scale } = moveView(fitView(box, size, margins), dx, dy, box, size);
        expect(leftMm).toBeLessThan(box.rightMm);
        expect(topMm).toBeLessThan(box.bottomMm);
        expect(leftMm + size.width / scale).toBeGreaterThan(box.leftMm);
        expect(topMm + size.height / scale).toBeGreaterThan(box.topMm);
      }),
    );
  });
});
