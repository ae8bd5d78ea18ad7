import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canvasLattice } from '../../../../../src/calc/runs/search/bounds/canvas-lattice';
import { sumInside, sumsBefore } from '../../../../../src/calc/runs/search/bounds/sums-before';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';

test('sumInside of sumsBefore counts panels and pixels of any window', () => {
  const holes = fc.uniqueArray(fc.nat(11), { maxLength: 6 });
  const range = (most: number) =>
    fc.tuple(fc.nat(most), fc.nat(most)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
  fc.assert(
    fc.property(holes, range(3), range(2), (gone, [c1, c2], [r1, r2]) => {
      // No column and no row is empty, so that there is a lattice of all of them.
      const grid = block(4, 3, (place) => place < 3 || place % 3 === 0 || !gone.includes(place));
      const places = [...grid.present.keys()].filter((place) => grid.present[place] === 1);
      const region = regionOf(grid, aPort(4), Int32Array.from(places));
      const { panels, pixels } = sumsBefore(region, canvasLattice(region)!);
      const inside = places.filter((place) => {
        const [column, row] = [Math.floor(place / 3), place % 3];
        return column >= c1 && column <= c2 && row >= r1 && row <= r2;
      }).length;
      expect(sumInside(panels, 3, c1, c2, r1, r2)).toBe(inside);
      expect(sumInside(pixels, 3, c1, c2, r1, r2)).toBe(inside * 216 * 216);
    }),
  );
});
