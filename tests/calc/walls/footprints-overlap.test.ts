import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { footprintsOverlap } from '../../../src/calc/walls/footprints-overlap';

const rectangle = (x: number, y: number, width: number, depth: number, turnDeg = 0) => {
  const cos = Math.cos((turnDeg * Math.PI) / 180);
  const sin = Math.sin((turnDeg * Math.PI) / 180);
  return [
    [0, 0],
    [width, 0],
    [width, depth],
    [0, depth],
  ].flatMap(([u, v]) => [x + u! * cos - v! * sin, y + u! * sin + v! * cos]);
};
const overlap = (a: number[], b: number[]) => {
  const corners = Float64Array.from([...a, ...b]);
  expect(footprintsOverlap(corners, 0, 1)).toBe(footprintsOverlap(corners, 1, 0));
  return footprintsOverlap(corners, 0, 1);
};

describe('footprintsOverlap', () => {
  const one = rectangle(0, 0, 500, 80);

  it('holds where they cross, lie in one another or on one another', () => {
    expect(overlap(one, rectangle(200, -100, 300, 50, 60))).toBe(true);
    expect(overlap(one, rectangle(100, 20, 50, 40))).toBe(true);
    expect(overlap(one, one)).toBe(true);
    // A thin one across: its ends both lie outside.
    expect(overlap(one, rectangle(250, -200, 500, 5, 90))).toBe(true);
  });

  it('does not hold where they touch, or reach in by less than a millimetre', () => {
    expect(overlap(one, rectangle(500, 0, 500, 80))).toBe(false);
    expect(overlap(one, rectangle(499.5, 0, 500, 80))).toBe(false);
    expect(overlap(one, rectangle(498, 0, 500, 80))).toBe(true);
  });

  it('agrees with points sampled in one and looked for in the other', () => {
    const coordinate = fc.integer({ min: -120, max: 120 });
    const angle = fc.integer({ min: 0, max: 359 });
    fc.assert(
      fc.property(coordinate, coordinate, angle, angle, (x, y, turnA, turnB) => {
        const [width, depth] = [100, 60];
        const inB = (pointX: number, pointY: number, byMm: number) => {
          const cos = Math.cos((turnB * Math.PI) / 180);
          const sin = Math.sin((turnB * Math.PI) / 180);
          const u = (pointX - x) * cos + (pointY - y) * sin;
          const v = (pointY - y) * cos - (pointX - x) * sin;
          return u > byMm && u < width - byMm && v > byMm && v < depth - byMm;
        };
        const samples: [number, number][] = [];
        for (let u = 4; u <= width - 4; u += 2) for (let v = 4; v <= depth - 4; v += 2) samples.push([u, v]);
        const cos = Math.cos((turnA * Math.PI) / 180);
        const sin = Math.sin((turnA * Math.PI) / 180);
        const plan = samples.map(([u, v]) => [u * cos - v * sin, u * sin + v * cos] as const);
        const found = overlap(rectangle(0, 0, width, depth, turnA), rectangle(x, y, width, depth, turnB));
        if (plan.some(([pointX, pointY]) => inB(pointX, pointY, 4))) expect(found).toBe(true);
        if (found) expect(plan.some(([pointX, pointY]) => inB(pointX, pointY, -12))).toBe(true);
      }),
    );
  });

  it('does not hold where only their boxes overlap', () => {
    expect(overlap(one, rectangle(505, -300, 500, 80, 45))).toBe(false);
    expect(overlap(one, rectangle(600, 0, 10, 10))).toBe(false);
  });
});
