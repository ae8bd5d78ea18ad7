import { describe, expect, it } from 'vitest';
import { placeHoles } from '../../../src/calc/walls/wall-holes';
import { plainSegment, plainWall } from './plain-wall';

const wall = plainWall(1, 0, 6, { path: [plainSegment('s1', 10, 0), plainSegment('s2', 5, 0)] });
const place = (segmentId: string, column: number, row: number, columns: number, rows: number) =>
  placeHoles({ ...wall, holes: [{ id: 'h', name: 'Door', segmentId, column, row, columns, rows }] })[0];

describe('placeHoles', () => {
  it('counts from 0, from its column in its segment', () => {
    expect(place('s1', 3, 1, 2, 4)).toEqual({
      index: 0,
      fromColumn: 2,
      toColumn: 4,
      fromRow: 0,
      toRow: 4,
      outside: false,
    });
    expect(place('s2', 1, 2, 5, 5)).toMatchObject({
      fromColumn: 10,
      toColumn: 15,
      fromRow: 1,
      toRow: 6,
      outside: false,
    });
  });

  it('goes on over the segment that follows', () => {
    expect(place('s1', 9, 1, 4, 1)).toMatchObject({ fromColumn: 8, toColumn: 12, outside: false });
  });

  it('cuts off what lies beyond the last column or the top row, and says so', () => {
    expect(place('s2', 4, 1, 3, 1)).toMatchObject({ fromColumn: 13, toColumn: 15, outside: true });
    expect(place('s1', 1, 5, 1, 3)).toMatchObject({ fromRow: 4, toRow: 6, outside: true });
  });

  it('takes nothing away where its segment, column or row is not there, and says so', () => {
    for (const nowhere of [place('gone', 1, 1, 1, 1), place('s2', 6, 1, 1, 1), place('s1', 1, 7, 1, 1)]) {
      expect(nowhere).toMatchObject({ fromColumn: 0, toColumn: 0, fromRow: 0, toRow: 0, outside: true });
    }
  });
});
