import { describe, expect, it } from 'vitest';
import reference from '../../../fixtures/reference/geometry.json';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { plainPanel } from '../panels/plain-panel';
import { plainSegment, plainWall } from './plain-wall';

const panels = [plainPanel('p1')];
const FOOT_MM = 304.8;
const facts = reference.tradeFacts;

describe('layOutWalls', () => {
  it('meets what the trade knows of 0.5 m columns with 2.5 degree joints', () => {
    // Common practice, no source: closes at 144 columns, about 75 ft inside, eight left out open about 13 ft,
    // 13 rows stand about 21 ft. 'About' is read as the nearest whole foot.
    const { closesAtColumns, jointDeg, columnsLeftOut, rows } = facts;
    const closed = layOutWalls([plainWall(closesAtColumns, jointDeg, rows)], panels).walls[0]!;
    expect(closed.openingMm).toBeCloseTo(0, 6);
    expect(Math.round(closed.insideDiameterMm! / FOOT_MM)).toBe(facts.insideFt);
    expect(Math.round(closed.heightMm / FOOT_MM)).toBe(facts.heightFt);
    const open = layOutWalls([plainWall(closesAtColumns - columnsLeftOut, jointDeg)], panels).walls[0]!;
    expect(Math.round(open.openingMm! / FOOT_MM)).toBe(facts.openingFt);
  });

  it('counts panels, pixels, area and joints of a ring', () => {
    const ring = layOutWalls([plainWall(136, 2.5, 13)], panels).walls[0]!;
    expect(ring.table.count).toBe(1768);
    expect(ring.pixels).toBe(1768 * 40_000);
    expect(ring.areaM2).toBeCloseTo(1768 * 0.25, 9);
    expect(ring.turnsDeg).toBe(337.5);
    expect(ring.columns).toBe(136);
    expect(ring.rows).toBe(13);
    expect(ring.table.canvasWidth).toBe(136 * 200);
    expect(ring.table.canvasHeight).toBe(13 * 200);
  });

  it('leaves the panels of a hole out of pixels and area', () => {
    const holes = [{ id: 'h', name: 'Door', segmentId: 's1', column: 5, row: 1, columns: 3, rows: 4 }];
    const wall = layOutWalls([plainWall(20, 0, 6, { holes })], panels).walls[0]!;
    expect(wall.table.count).toBe(120 - 12);
    expect(wall.pixels).toBe(108 * 40_000);
    expect(wall.areaM2).toBeCloseTo(27, 9);
  });

  it('gives a mirrored wall mirrored geometry when its path is reversed', () => {
    const path = [
      plainSegment('a', 7, 5, { mixed: { jointDeg: 2.5, count: 2 } }),
      plainSegment('b', 4, 0, { jointBeforeDeg: -2.5 }),
      plainSegment('c', 9, 10, { jointBeforeDeg: 2.5 }),
    ];
    const reversed = [
      { ...path[2]!, jointBeforeDeg: 0 },
      { ...path[1]!, jointBeforeDeg: 2.5 },
      { ...path[0]!, jointBeforeDeg: -2.5 },
    ];
    const one = layOutWalls([plainWall(1, 0, 1, { path })], panels).walls[0]!;
    const other = layOutWalls([plainWall(1, 0, 1, { path: reversed })], panels).walls[0]!;
    const last = one.columns - 1;
    for (let c = 0; c <= last; c++) {
      expect(other.frontMm[c * 4]).toBeCloseTo(-one.frontMm[(last - c) * 4 + 2]!, 6);
      expect(other.frontMm[c * 4 + 1]).toBeCloseTo(one.frontMm[(last - c) * 4 + 3]!, 6);
      expect(other.backMm[c * 4]).toBeCloseTo(-one.backMm[(last - c) * 4 + 2]!, 6);
      expect(other.columnHeadingDeg[c]).toBeCloseTo(-one.columnHeadingDeg[last - c]!, 9);
    }
    expect(other.bestFit!.radiusMm).toBeCloseTo(one.bestFit!.radiusMm, 5);
  });

  it('puts the ends of an S-curve level and its middle between them', () => {
    const path = [plainSegment('a', 12, 5), plainSegment('b', 12, -5, { jointBeforeDeg: 0 })];
    const bevelled = [plainPanel('p1', { size: { bevelled: true } })];
    const wall = layOutWalls([plainWall(1, 0, 1, { path })], bevelled).walls[0]!;
    const last = wall.frontMm.length;
    // Two arcs of 12 facets at 5 degrees, one concave, one convex: a point reflection about the middle, which is 0, 0.
    expect(wall.frontMm[0]).toBeCloseTo(-wall.frontMm[last - 2]!, 6);
    expect(wall.frontMm[1]).toBeCloseTo(-wall.frontMm[last - 1]!, 6);
    expect(wall.frontMm[46]).toBeCloseTo(0, 6);
    expect(wall.frontMm[47]).toBeCloseTo(0, 6);
    expect(wall.openingMm).toBeNull();
  });

  it('empties a wall that cannot be laid out, in its place, and lays out the others', () => {
    const gone = plainWall(10, 2.5, 3, {
      place: { xMm: 5, yMm: 6, turnDeg: 0 },
      bands: [{ id: 'b', panelId: 'gone', rows: 3, turnDeg: 0 }],
    });
    const { walls } = layOutWalls([gone, plainWall(10, 0, 3)], panels);
    expect(walls[0]).toMatchObject({
      columns: 0,
      rows: 0,
      pixels: 0,
      areaM2: 0,
      bestFit: null,
      insideDiameterMm: null,
      openingMm: null,
      box: { leftMm: 5, rightMm: 5, frontMm: 6, backMm: 6 },
    });
    expect(walls[0]!.table.count).toBe(0);
    expect(walls[1]!.table.count).toBe(30);
  });

  it('gives no walls for none', () => {
    expect(layOutWalls([], panels)).toEqual({ walls: [] });
  });
});
