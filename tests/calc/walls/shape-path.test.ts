import { describe, expect, it } from 'vitest';
import reference from '../../../fixtures/reference/geometry.json';
import { shapePath } from '../../../src/calc/walls/shape-path';

const example = (name: string) => reference.examples.find((one) => one.name === name)!.values as never;

/** A ring of facets: `columns` columns of one width and joint. */
const ring = (
  columns: number,
  jointDeg: number,
  widthMm: number,
  more: Partial<Parameters<typeof shapePath>[0]> = {},
) =>
  shapePath({
    jointDeg: new Float64Array(columns).fill(jointDeg),
    columnWidthMm: widthMm,
    depthMm: 80,
    unbevelledMm: 80,
    turnDeg: 0,
    xMm: 0,
    yMm: 0,
    ...more,
  });

describe('shapePath', () => {
  it('gives a regular polygon its apothem and circumradius', () => {
    // Source: fixtures/reference/geometry.json, 'regular polygons with R = 1'.
    const polygons = example('regular polygons with R = 1') as { n: number; side: number; apothem: number }[];
    for (const { n, side, apothem } of polygons) {
      const { insideDiameterMm, frontMm, openingMm, bestFit } = ring(n, 360 / n, side * 1000);
      expect(insideDiameterMm).toBeCloseTo(2000 * apothem, 7);
      expect(Math.hypot(frontMm[0]!, frontMm[1]!)).toBeCloseTo(1000, 7);
      expect(openingMm).toBeCloseTo(0, 7);
      expect(bestFit!.radiusMm).toBeCloseTo(1000 * apothem, 7);
      expect(bestFit!.worstMm).toBeCloseTo(0, 7);
    }
  });

  it('gives an octagon of side 2.0711 its 5 across flats', () => {
    // Source: fixtures/reference/geometry.json, 'octagon 5 in across flats' (sciencing.com, side read).
    const { side } = example('octagon 5 in across flats') as { side: number };
    expect(ring(8, 45, side).insideDiameterMm).toBeCloseTo(5, 8);
  });

  it('gives rings of fixed joints their apothem and corners', () => {
    // Source: fixtures/reference/geometry.json, 'ring of facets with a fixed joint angle'.
    const rings = example('ring of facets with a fixed joint angle') as {
      width: number;
      jointDeg: number;
      circumradius: number;
      apothem: number;
      facetsForFullRing: number;
    }[];
    for (const { width, jointDeg, circumradius, apothem, facetsForFullRing } of rings) {
      const { insideDiameterMm, frontMm, openingMm } = ring(facetsForFullRing, jointDeg, width);
      expect(insideDiameterMm! / 2).toBeCloseTo(apothem, 6);
      expect(Math.hypot(frontMm[40]!, frontMm[41]!)).toBeCloseTo(circumradius, 6);
      expect(openingMm).toBeCloseTo(0, 6);
    }
  });

  it('opens a ring short of k columns by 2 R sin(k joint / 2)', () => {
    // Source: chord of a circle, any handbook of mathematics; R from the reference ring of 500 mm at 2.5 degrees.
    for (const short of [1, 2, 8, 20, 70]) {
      const chord = 2 * 11460.064978748562 * Math.sin((short * 2.5 * Math.PI) / 360);
      expect(ring(144 - short, 2.5, 500).openingMm).toBeCloseTo(chord, 6);
    }
  });

  it('has the same opening however it is turned', () => {
    const opening = ring(136, 2.5, 500).openingMm!;
    for (const turnDeg of [33, 90, -120]) expect(ring(136, 2.5, 500, { turnDeg }).openingMm).toBeCloseTo(opening, 6);
  });

  it('has no circle for a flat wall however it is turned, and one for an S that ends as it began', () => {
    for (const turnDeg of [0, 33, 90, -120]) expect(ring(40, 0, 500, { turnDeg, xMm: 12_345 }).bestFit).toBeNull();
    const jointDeg = Float64Array.from([0, ...new Array<number>(8).fill(5), ...new Array<number>(4).fill(-10)]);
    const curve = ring(13, 0, 500, { jointDeg });
    expect(curve.turnsDeg).toBe(0);
    expect(curve.bestFit).not.toBeNull();
    expect(curve.insideDiameterMm).toBeNull();
  });

  it('opens downwards and stands about its centre when it turns half a turn or more', () => {
    const { frontMm, bestFit } = ring(136, 2.5, 500, { xMm: 1000, yMm: -2000 });
    expect(bestFit!.centre.xMm).toBeCloseTo(1000, 6);
    expect(bestFit!.centre.yMm).toBeCloseTo(-2000, 6);
    const last = frontMm.length;
    expect(frontMm[1]).toBeCloseTo(frontMm[last - 1]!, 6);
    expect(frontMm[1]! + 2000).toBeLessThan(-11_000);
    expect(frontMm[0]! - 1000).toBeCloseTo(-(frontMm[last - 2]! - 1000), 6);
  });

  it('puts column 1 on the left of someone at the centre who faces the wall', () => {
    for (const turnDeg of [0, 37, 90, -150, 180]) {
      const { frontMm, bestFit } = ring(136, 2.5, 500, { turnDeg, xMm: 300, yMm: 700 });
      const { xMm, yMm } = bestFit!.centre;
      // Facing the middle of the wall, left is a quarter turn anticlockwise from there.
      const middle = 68 * 4;
      const aheadX = frontMm[middle]! - xMm;
      const aheadY = frontMm[middle + 1]! - yMm;
      const isLeft = (column: number) =>
        aheadX * (frontMm[column * 4 + 1]! - yMm) - aheadY * (frontMm[column * 4]! - xMm);
      expect(isLeft(0)).toBeGreaterThan(0);
      expect(isLeft(135)).toBeLessThan(0);
      // C1 stands left of C2, seen from the centre: C2 is clockwise from C1.
      const clockwise = (frontMm[0]! - xMm) * (frontMm[5]! - yMm) - (frontMm[1]! - yMm) * (frontMm[4]! - xMm);
      expect(clockwise).toBeLessThan(0);
    }
  });

  it('stands about the middle between its ends when it turns less than half a turn', () => {
    const { frontMm, openingMm, insideDiameterMm } = ring(20, 2.5, 500, { xMm: 100, yMm: 50 });
    const last = frontMm.length;
    expect((frontMm[0]! + frontMm[last - 2]!) / 2).toBeCloseTo(100, 9);
    expect((frontMm[1]! + frontMm[last - 1]!) / 2).toBeCloseTo(50, 9);
    expect(openingMm).toBeNull();
    expect(insideDiameterMm! / 2).toBeCloseTo(11457.337793621136, 4);
  });

  it('has neither circle nor diameter for a flat wall, nor a diameter for a convex one', () => {
    const flat = ring(10, 0, 500);
    expect(flat.bestFit).toBeNull();
    expect(flat.insideDiameterMm).toBeNull();
    expect(flat.box).toEqual({ leftMm: -2500, rightMm: 2500, frontMm: 0, backMm: 80 });
    const drum = ring(36, -10, 500, { unbevelledMm: 0 });
    expect(drum.insideDiameterMm).toBeNull();
    expect(drum.bestFit!.radiusMm).toBeCloseTo(2857.513075690336, 5);
    expect(drum.openingMm).toBeCloseTo(0, 6);
  });

  it('has no circle for fewer than three columns', () => {
    expect(ring(2, 10, 500).bestFit).toBeNull();
    expect(ring(1, 0, 500).bestFit).toBeNull();
  });

  it('boxes a closed ring from back to back', () => {
    // A square of 1000 mm columns, turned so that its corners lie off the axes: faces 500 from the middle, backs 80 behind, so 1160 each way.
    const { box } = ring(4, 90, 1000, { turnDeg: 45 });
    expect(box.rightMm - box.leftMm).toBeCloseTo(1160, 6);
    expect(box.backMm - box.frontMm).toBeCloseTo(1160, 6);
  });

  it('says how far a ring of mixed joints strays from its circle', () => {
    const even = ring(72, 5, 500);
    const jointDeg = new Float64Array(72).map((_, c) => (c % 3 === 0 ? 10 : 2.5));
    const mixed = ring(72, 5, 500, { jointDeg });
    expect(even.bestFit!.worstMm).toBeLessThan(1e-6);
    expect(mixed.bestFit!.worstMm).toBeGreaterThan(1);
    expect(mixed.insideDiameterMm!).toBeLessThan(even.insideDiameterMm!);
  });
});
