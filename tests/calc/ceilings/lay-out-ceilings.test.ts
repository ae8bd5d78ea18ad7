import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { ceilingArbitrary } from '../../arbitraries/ceiling';
import { panelArbitrary } from '../../arbitraries/panel';
import { plainPanel } from '../panels/plain-panel';
import { expectFinite } from '../surfaces/expect-finite';
import { plainWall } from '../walls/plain-wall';
import { plainCeiling } from './plain-ceiling';

const panels = [plainPanel('p1')];
const noWalls = { walls: [] };

describe('layOutCeilings', () => {
  it('sums panels to area and pixels', () => {
    const ceiling = layOutCeilings([plainCeiling()], panels, noWalls).ceilings[0]!;
    expect(ceiling).toMatchObject({ ceilingId: 'ceiling', letter: 'B', areaM2: 3, pixels: 12 * 40_000 });
    expect(ceiling.table.count).toBe(12);
  });

  it('has neither cover nor gap without a wall', () => {
    expect(layOutCeilings([plainCeiling()], panels, noWalls).ceilings[0]).toMatchObject({
      coverShare: null,
      gapLeastMm: null,
      gapGreatestMm: null,
    });
  });

  it('covers a ring’s disc and keeps its gap to it', () => {
    // Ring of 500 mm at 2.5 degrees: apothem 11457.338 (fixtures/reference/geometry.json). A square of 30 x 30 panels
    // has its corner at 7500 sqrt 2 = 10606.602: inside the disc, so it covers 225 m2 of pi r^2.
    const walls = layOutWalls([plainWall(144, 2.5)], panels);
    const square = plainCeiling({
      place: { ...plainCeiling().place, centredAlong: false },
      outline: { kind: 'rectangle', widthMm: 15_000, depthMm: 15_000 },
    });
    const ceiling = layOutCeilings([square], panels, walls).ceilings[0]!;
    expect(ceiling.table.count).toBe(900);
    expect(ceiling.coverShare).toBeCloseTo(225 / (Math.PI * 11.457337793621136 ** 2), 9);
    // The corner lies on a diagonal of the ring: a column's face there is between apothem and corner radius away.
    expect(ceiling.gapLeastMm).toBeGreaterThanOrEqual(11457.337 - 10606.603);
    expect(ceiling.gapLeastMm).toBeLessThanOrEqual(11460.066 - 10606.601);
    // Farthest are the columns with a corner on an axis; their other corner is nearer to the panels: R cos 2.5 degrees.
    expect(ceiling.gapGreatestMm).toBeCloseTo(11460.064978748562 * Math.cos((2.5 * Math.PI) / 180) - 7500, 6);
  });

  it('keeps the lattice number of a panel when the outline grows', () => {
    const wider = plainCeiling({ outline: { kind: 'rectangle', widthMm: 3000, depthMm: 1500 } });
    const [small, large] = layOutCeilings([plainCeiling(), wider], panels, noWalls).ceilings;
    expect([small!.firstLatticeColumn, large!.firstLatticeColumn]).toEqual([-2, -3]);
    const xOf = (ceiling: typeof small, latticeColumn: number) => {
      const column = latticeColumn - ceiling!.firstLatticeColumn + 1;
      return ceiling!.table.xMm[[...ceiling!.table.column].indexOf(column)];
    };
    for (const latticeColumn of [-2, -1, 0, 1]) expect(xOf(small, latticeColumn)).toBe(xOf(large, latticeColumn));
  });

  it('empties a ceiling without its panel, and one beyond what the walls leave', () => {
    const walls = layOutWalls([plainWall(2500, 0, 100, { id: 'w' })], panels);
    expect(walls.walls[0]!.table.count).toBe(250_000);
    const [gone, full] = layOutCeilings([plainCeiling({ panelId: 'gone' }), plainCeiling()], panels, walls).ceilings;
    for (const empty of [gone, full]) {
      expect(empty).toMatchObject({ areaM2: 0, pixels: 0, coverShare: null, gapLeastMm: null, gapGreatestMm: null });
      expect(empty!.table.count).toBe(0);
      expect(empty!.outlineMm).toHaveLength(4);
    }
  });

  it('gives finite numbers, and each panel once, for any ceiling that the schema accepts', () => {
    const walls = layOutWalls([plainWall(40, 5)], panels);
    fc.assert(
      fc.property(ceilingArbitrary, panelArbitrary(fc.constant('p1')), (ceiling, panel) => {
        const result = layOutCeilings([ceiling], [panel], walls).ceilings[0]!;
        expectFinite(result, 'ceiling');
        const { table } = result;
        for (let i = 0; i < table.count; i++) {
          if (table.at[(table.column[i]! - 1) * table.rows + table.row[i]! - 1] !== i)
            throw new Error(`panel ${i} lost`);
        }
        expect(table.at.filter((one) => one >= 0).length).toBe(table.count);
        expect(result.pixels).toBe(table.count * (panel.pixels.wide * panel.pixels.high));
        if (result.coverShare !== null) {
          expect(result.coverShare).toBeGreaterThanOrEqual(0);
          expect(result.coverShare).toBeLessThanOrEqual(1 + 1e-9);
        }
        if (result.gapLeastMm !== null) expect(result.gapLeastMm).toBeLessThanOrEqual(result.gapGreatestMm!);
      }),
      { numRuns: 150 },
    );
  });

  it('keeps more panels by centre than whole, and more by any part than by centre', () => {
    fc.assert(
      fc.property(ceilingArbitrary, (ceiling) => {
        const [whole, centre, any] = (['whole', 'centre', 'any'] as const).map((rule) => {
          const panel = plainPanel(ceiling.panelId);
          return layOutCeilings([{ ...ceiling, rule }], [panel], noWalls).ceilings[0]!.table.count;
        });
        if (any === 0) return;
        expect(whole).toBeLessThanOrEqual(centre!);
        // A centre on the outline counts as inside even where no part of the panel is; that takes a flat polygon.
        if (ceiling.outline.kind !== 'polygon') expect(centre).toBeLessThanOrEqual(any!);
      }),
      { numRuns: 100 },
    );
  });
});
