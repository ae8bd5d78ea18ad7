import { describe, expect, it } from 'vitest';
import { layOutCeilings } from '../../src/calc/ceilings/lay-out-ceilings';
import { layOutWalls } from '../../src/calc/walls/lay-out-walls';
import { plainCeiling } from '../calc/ceilings/plain-ceiling';
import { plainPanel } from '../calc/panels/plain-panel';
import { plainWall } from '../calc/walls/plain-wall';
import { ceilingOf } from './ceiling-fixture';
import { wallOf } from './wall-fixture';

/** Columns of a table that say where panels are; the rest hangs on the panel's sheet. */
const geometry = ['column', 'row', 'xMm', 'yMm', 'zMm', 'at'] as const;

const same = (made: ArrayLike<number>, expected: ArrayLike<number>) => {
  expect(made.length).toBe(expected.length);
  for (let i = 0; i < made.length; i++) expect(made[i]).toBeCloseTo(expected[i]!, 5);
};

describe('the hand-built stage', () => {
  it.each([
    ['a ring', 136, 2.5, 0],
    ['an arc', 20, 5, 600],
    ['a flat wall', 16, 0, 0],
  ])('stands where calc lays out %s', (_, columns, jointDeg, baseMm) => {
    const hole = { column: 4, row: 1, columns: 2, rows: 2 };
    const built = wallOf({ columns, rows: 5, jointDeg, baseMm, hole });
    const holes = [{ id: 'h', name: '', segmentId: 's1', ...hole }];
    const panel = plainPanel('p1', { size: { depthMm: 90 } });
    const laid = layOutWalls([plainWall(columns, jointDeg, 5, { baseMm, holes })], [panel]).walls[0]!;
    // An arc below half a turn is placed by the middle between its ends, the fixture by its centre: moved up to there.
    const lift = laid.frontMm[1]! - built.frontMm[1]!;
    const lifted = (points: Float64Array) => points.map((value, i) => (i % 2 === 1 ? value + lift : value));
    same(lifted(built.frontMm), laid.frontMm);
    same(lifted(built.backMm), laid.backMm);
    same(built.columnHeadingDeg, laid.columnHeadingDeg);
    for (const key of geometry) {
      const expected = laid.table[key];
      same(key === 'yMm' ? built.table.yMm.map((y) => y + lift) : built.table[key], expected);
    }
  });
  it.each([0, 30])('hangs where calc lays out a round ceiling turned by %d degrees', (turnDeg) => {
    const built = ceilingOf(4000, turnDeg);
    const ceiling = plainCeiling({
      outline: { kind: 'circle', diameterMm: 4000 },
      rule: 'centre',
      place: { xMm: 0, yMm: 0, turnDeg, centredAcross: false, centredAlong: false },
      height: { trimMm: 6200, lowestMm: 4000, highestMm: 7000 },
    });
    const laid = layOutCeilings([ceiling], [plainPanel('p1')], { walls: [] }).ceilings[0]!;
    for (const key of geometry) same(built.table[key], laid.table[key]);
  });
});
