import { describe, expect, it } from 'vitest';
import { stackBands } from '../../../src/calc/walls/stack-bands';
import type { TurnDeg } from '../../../src/plan/primitives';
import { plainPanel } from '../panels/plain-panel';

const shapes = new Map([
  ['low', plainPanel('low', { size: { depthMm: 80 } })],
  [
    'tall',
    plainPanel('tall', { size: { heightMm: 1000, depthMm: 100, bevelled: true }, pixels: { wide: 128, high: 256 } }),
  ],
]);
const band = (id: string, panelId: string, rows: number, turnDeg: TurnDeg = 0) => ({ id, panelId, rows, turnDeg });

describe('stackBands', () => {
  it('stacks six rows of 1000 mm and one of 500 to 6500 mm', () => {
    const stack = stackBands([band('a', 'tall', 6), band('b', 'low', 1)], shapes);
    expect(stack.heightMm).toBe(6500);
    expect([...stack.lowerEdgeMm]).toEqual([0, 1000, 2000, 3000, 4000, 5000, 6000]);
    expect([...stack.type]).toEqual([0, 0, 0, 0, 0, 0, 1]);
    expect([...stack.pixelsBelow]).toEqual([0, 256, 512, 768, 1024, 1280, 1536]);
    expect(stack.pixelsHigh).toBe(6 * 256 + 200);
  });

  it('takes the widest in pixels for the canvas and the deepest for the back', () => {
    const stack = stackBands([band('a', 'tall', 1), band('b', 'low', 1)], shapes);
    expect(stack.pixelsWide).toBe(200);
    expect(stack.depthMm).toBe(100);
    // Only the panel without a bevel opens a convex seam.
    expect(stack.unbevelledMm).toBe(80);
  });

  it('turns a panel on its side by a quarter turn, and keeps it upright by half a turn', () => {
    const turned = stackBands([band('a', 'tall', 2, 90)], shapes);
    expect(turned.columnWidthMm).toBe(1000);
    expect(turned.heightMm).toBe(1000);
    expect(turned.pixelsWide).toBe(256);
    expect(turned.pixelsHigh).toBe(256);
    expect(stackBands([band('a', 'tall', 2, 180)], shapes).heightMm).toBe(2000);
  });

  it('lists a panel type once however many bands take it, and again where it is turned', () => {
    const stack = stackBands(
      [band('a', 'low', 1), band('b', 'tall', 1), band('c', 'low', 2), band('d', 'low', 1, 180)],
      shapes,
    );
    expect(stack.types.map((type) => [type.panelId, type.turnDeg])).toEqual([
      ['low', 0],
      ['tall', 0],
      ['low', 180],
    ]);
    expect([...stack.type]).toEqual([0, 1, 0, 0, 2]);
  });

  it('adds heights exactly, in whole micrometres', () => {
    // 1000 rows of 0.1 mm are 100 mm; summed in floating point they are 99.9999999999986.
    const thin = new Map([['p', plainPanel('p', { size: { heightMm: 0.1 } })]]);
    expect(stackBands([band('a', 'p', 1000)], thin).heightMm).toBe(100);
  });
});
