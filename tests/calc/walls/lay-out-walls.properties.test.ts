import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import type { WallResult } from '../../../src/calc/walls/wall-result';
import { panelArbitrary } from '../../arbitraries/panel';
import { wallArbitrary } from '../../arbitraries/wall';
import { expectFinite } from '../surfaces/expect-finite';

const wallAndPanels = fc.tuple(wallArbitrary, panelArbitrary(fc.constant('p1')), panelArbitrary(fc.constant('p2')));

const places = ({ table }: WallResult) => {
  const seen = new Set<number>();
  for (let i = 0; i < table.count; i++) seen.add((table.column[i]! - 1) * table.rows + table.row[i]! - 1);
  return seen;
};

describe('layOutWalls, for any wall that the schema accepts', () => {
  it('gives finite numbers only', () => {
    fc.assert(
      fc.property(wallAndPanels, ([wall, ...panels]) => expectFinite(layOutWalls([wall], panels).walls[0]!, 'wall')),
      { numRuns: 300 },
    );
  });

  it('sums panels to pixels and area, each place at most once, and finds each back by its place', () => {
    fc.assert(
      fc.property(wallAndPanels, ([wall, ...panels]) => {
        const result = layOutWalls([wall], panels).walls[0]!;
        const { table } = result;
        let pixels = 0;
        let areaM2 = 0;
        for (let i = 0; i < table.count; i++) {
          const type = table.types[table.type[i]!]!;
          pixels += type.pixelsWide * type.pixelsHigh;
          areaM2 += (type.widthMm * type.heightMm) / 1e6;
          if (table.at[(table.column[i]! - 1) * table.rows + table.row[i]! - 1] !== i)
            throw new Error(`panel ${i} lost`);
        }
        expect(result.pixels).toBe(pixels);
        expect(Math.abs(result.areaM2 - areaM2)).toBeLessThanOrEqual(1e-9 * areaM2);
        expect(places(result).size).toBe(table.count);
        expect(table.at.filter((panel) => panel >= 0).length).toBe(table.count);
      }),
      { numRuns: 150 },
    );
  });

  it('makes every column as wide as its panels, and every seam as wide as it says', () => {
    fc.assert(
      fc.property(wallAndPanels, ([wall, ...panels]) => {
        const { columns, frontMm, backMm, jointDeg, seamMm, columnWidthMm } = layOutWalls([wall], panels).walls[0]!;
        const apart = (corners: Float64Array, from: number, to: number) =>
          Math.hypot(corners[to]! - corners[from]!, corners[to + 1]! - corners[from + 1]!);
        for (let c = 0; c < columns; c++) {
          const near = 1e-9 * (Math.abs(frontMm[c * 4]!) + Math.abs(frontMm[c * 4 + 1]!) + 1e6);
          expect(Math.abs(apart(frontMm, c * 4, c * 4 + 2) - columnWidthMm)).toBeLessThan(near);
          if (c === 0) continue;
          const corners = jointDeg[c]! > 0 ? backMm : frontMm;
          expect(Math.abs(apart(corners, c * 4 - 2, c * 4) - seamMm[c]!)).toBeLessThan(near);
        }
      }),
      { numRuns: 100 },
    );
  });
});
