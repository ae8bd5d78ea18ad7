import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostInRectangle } from '../../../../../src/calc/runs/search/bounds/most-in-rectangle';
import { regionOf } from '../../../../../src/calc/runs/search/region';
import { aPort, block } from '../block-of-panels';

const of = (columns: number, rows: number, usable: number, isThere?: (place: number) => boolean) => {
  const grid = block(columns, rows, isThere);
  const places = [...grid.present.keys()].filter((place) => grid.present[place] === 1);
  return mostInRectangle(regionOf(grid, aPort(usable, 'rectangle'), Int32Array.from(places)));
};

test('mostInRectangle of 5 x 5 panels on a port of seven is the six of 2 x 3', () => {
  // 1 x 5 holds five, 2 x 3 six, 7 x 1 does not fit the block, 3 x 3 is nine.
  expect(of(5, 5, 7)).toEqual({ panels: 6, pixels: 6 * 216 * 216 });
});

test('mostInRectangle counts the panels that are there in the best of all windows', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.nat(15), { maxLength: 10 }), fc.integer({ min: 1, max: 9 }), (gone, usable) => {
      // No column and no row is empty, so that there is a lattice of all of them.
      const isThere = (place: number) => place < 4 || place % 4 === 0 || !gone.includes(place);
      let most = 0;
      for (let c1 = 0; c1 < 4; c1++)
        for (let c2 = c1; c2 < 4; c2++)
          for (let r1 = 0; r1 < 4; r1++)
            for (let r2 = r1; r2 < 4; r2++) {
              if ((c2 - c1 + 1) * (r2 - r1 + 1) > usable) continue;
              let panels = 0;
              for (let c = c1; c <= c2; c++) for (let r = r1; r <= r2; r++) if (isThere(c * 4 + r)) panels++;
              most = Math.max(most, panels);
            }
      expect(of(4, 4, usable, isThere)?.panels).toBe(most);
    }),
  );
});
