import { describe, expect, it } from 'vitest';
import reference from '../../../fixtures/reference/geometry.json';
import { walkPath } from '../../../src/calc/walls/walk-path';

const example = (name: string) => reference.examples.find((one) => one.name === name)!.values as never;
const walk = (joints: number[], more: Partial<Parameters<typeof walkPath>[0]> = {}) =>
  walkPath({
    jointDeg: Float64Array.from([0, ...joints]),
    columnWidthMm: 500,
    depthMm: 80,
    unbevelledMm: 80,
    turnDeg: 0,
    ...more,
  });
const uniform = (columns: number, joint: number) => new Array<number>(columns - 1).fill(joint);

describe('walkPath', () => {
  it('walks a flat wall along +x with its backs behind, on the left of the walk', () => {
    const { frontMm, backMm, headingDeg } = walk([0]);
    expect([...frontMm]).toEqual([0, 0, 500, 0, 500, 0, 1000, 0]);
    expect([...backMm]).toEqual([0, 80, 500, 80, 500, 80, 1000, 80]);
    expect([...headingDeg]).toEqual([0, 0]);
  });

  it('heads along the turn in the middle of the wall and bends clockwise on concave joints', () => {
    expect([...walk([10, 10], { turnDeg: 30 }).headingDeg]).toEqual([40, 30, 20]);
    expect([...walk([-10, -10]).headingDeg]).toEqual([-10, 0, 10]);
  });

  it('finds chord and depth of open arcs as the closed form does', () => {
    // Source: fixtures/reference/geometry.json, 'open arc of facets' (polyline walk against 2 R sin(n d / 2)).
    const arcs = example('open arc of facets') as {
      width: number;
      jointDeg: number;
      facets: number;
      chord: number;
      deepestVertexFromChord: number;
    }[];
    expect(arcs).toHaveLength(5);
    for (const arc of arcs) {
      const { frontMm } = walk(uniform(arc.facets, arc.jointDeg), { columnWidthMm: arc.width });
      const last = frontMm.length;
      expect(Math.hypot(frontMm[last - 2]!, frontMm[last - 1]!)).toBeCloseTo(arc.chord, 6);
      // Heading 0 in the middle: the chord lies along x, and depth is the highest y.
      expect(Math.max(...frontMm.filter((_, i) => i % 2 === 1))).toBeCloseTo(arc.deepestVertexFromChord, 6);
    }
  });

  it('stands backs apart by 2 d sin(joint / 2) on a concave joint, and measures it so', () => {
    const { backMm, frontMm, seamMm } = walk([5]);
    // 2 x 80 x sin 2.5 degrees = 160 x 0.0436193874 = 6.979102.
    expect(seamMm[1]).toBeCloseTo(6.979102, 6);
    expect(Math.hypot(backMm[4]! - backMm[2]!, backMm[5]! - backMm[3]!)).toBeCloseTo(6.979102, 6);
    expect(Math.hypot(frontMm[4]! - frontMm[2]!, frontMm[5]! - frontMm[3]!)).toBe(0);
  });

  it('lets unbevelled backs touch on a convex joint and gains the gap between the fronts along the mean heading', () => {
    const { backMm, frontMm, seamMm } = walk([-5]);
    expect(seamMm[1]).toBeCloseTo(6.979102, 6);
    expect(backMm[4]).toBeCloseTo(backMm[2]!, 9);
    expect(backMm[5]).toBeCloseTo(backMm[3]!, 9);
    // The mean of the headings -2.5 and 2.5 is 0: the gap lies along x alone.
    expect(frontMm[4]! - frontMm[2]!).toBeCloseTo(6.979102, 6);
    expect(frontMm[5]! - frontMm[3]!).toBeCloseTo(0, 9);
  });

  it('lets bevelled fronts touch on a convex joint, without a gap', () => {
    const { frontMm, seamMm } = walk([-5], { unbevelledMm: 0 });
    expect(seamMm[1]).toBe(0);
    expect(Math.hypot(frontMm[4]! - frontMm[2]!, frontMm[5]! - frontMm[3]!)).toBe(0);
  });

  it('runs an S-curve back to its first heading', () => {
    const { headingDeg, turnsDeg } = walk([...uniform(9, 5), 0, ...uniform(9, -5)]);
    expect(turnsDeg).toBe(0);
    expect(headingDeg[17]).toBe(headingDeg[0]);
  });
});
