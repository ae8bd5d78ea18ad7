import { expect, test } from 'vitest';
import { narrowWall } from '../../../../src/calc/levers/steps/narrow-wall';
import type { WallHole } from '../../../../src/plan/wall';
import { plainSegment, plainWall } from '../../walls/plain-wall';

const path = [plainSegment('one', 4, 0), plainSegment('two', 6, 0), plainSegment('three', 2, 0)];
const hole = (segmentId: string, column: number, columns: number): WallHole => ({
  id: `${segmentId}-${column}`,
  name: 'Door',
  segmentId,
  column,
  row: 1,
  columns,
  rows: 2,
});
const narrowed = (count: number, ...holes: WallHole[]) => narrowWall(plainWall(1, 0, 3, { path, holes }), count)!;
const holesOf = (count: number, ...holes: WallHole[]) =>
  narrowed(count, ...holes).wall.holes.map(({ segmentId, column, columns }) => [segmentId, column, columns]);

test('narrowWall takes columns from both ends in turn, and null when none would be left', () => {
  // Seven fewer of twelve: four from the right (three goes, two keeps 4), three from the left (one keeps 1).
  const { wall, shiftedBy } = narrowed(7);
  expect(wall.path.map(({ id, columns }) => `${id} ${columns}`)).toEqual(['one 1', 'two 4']);
  expect(shiftedBy).toBe(3);
  // Ten fewer: five on the left take all of one and the first of two.
  expect(narrowed(10)).toMatchObject({ wall: { path: [{ id: 'two', columns: 2 }] }, shiftedBy: 1 });
  expect(narrowWall(plainWall(1, 0, 3, { path }), 12)).toBeNull();
});

test('narrowWall mixes no more joints than are left', () => {
  const mixed = plainSegment('one', 6, 2.5, { mixed: { jointDeg: 5, count: 4 } });
  const after = (count: number) => narrowWall(plainWall(1, 0, 1, { path: [mixed] }), count)!.wall.path[0]!.mixed;
  expect(after(2)).toEqual({ jointDeg: 5, count: 3 });
  expect(after(5)).toBeNull();
});

test('narrowWall leaves a hole where it is, though its columns count from another one now', () => {
  // Three from the left: column 6 of twelve, the second of segment two, is the third of six.
  expect(holesOf(6, hole('two', 2, 2))).toEqual([['two', 2, 2]]);
  expect(holesOf(6, hole('one', 4, 3))).toEqual([['one', 1, 3]]);
  // Five from the left: segment one is gone, and the hole goes on in segment two, of which one column is gone too.
  expect(holesOf(10, hole('two', 2, 2))).toEqual([['two', 1, 2]]);
});

test('narrowWall takes of a hole what goes with the columns', () => {
  expect(holesOf(6, hole('one', 2, 4))).toEqual([['one', 1, 2]]);
  expect(holesOf(6, hole('one', 1, 2))).toEqual([]);
  expect(holesOf(6, hole('two', 6, 3))).toEqual([]);
  expect(holesOf(6, hole('two', 4, 4))).toEqual([['two', 4, 2]]);
  expect(holesOf(10, hole('one', 3, 4))).toEqual([['two', 1, 1]]);
});

test('narrowWall leaves a hole alone that was not on the wall', () => {
  expect(holesOf(6, hole('gone', 2, 2), hole('one', 9, 2))).toEqual([
    ['gone', 2, 2],
    ['one', 9, 2],
  ]);
});
