import { expect, it } from 'vitest';
import { LineBuilder } from '../../src/sheets/line-builder';
import { mapLines } from '../../src/sheets/map-lines';
import { polylines } from './polylines';

it('mapLines moves every point and keeps which belong together', () => {
  const lines = new LineBuilder().segment(1, 2, 3, 4).rectangle(0, 0, 1, 1).build(true);
  const moved = mapLines(lines, (x, y) => [10 + x, -y]);
  expect(polylines(moved)[0]).toEqual([
    [11, -2],
    [13, -4],
  ]);
  expect(moved.ends).toEqual(lines.ends);
  expect(moved.closed).toBe(true);
});
