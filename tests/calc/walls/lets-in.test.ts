import { expect, test } from 'vitest';
import { letsIn } from '../../../src/calc/walls/lets-in';
import { judgeWall } from './judge-wall';
import { plainWall } from './plain-wall';

const none = { widthMm: null, heightMm: null };
const wide = (widthMm: number, heightMm: number | null = null) => ({ widthMm, heightMm });
const door = (columns: number, rows: number) => ({
  holes: [{ id: 'door', name: 'Door', segmentId: 's1', column: 70, row: 1, columns, rows }],
});

test('letsIn by an opening as wide as the chord of the columns left out', () => {
  // 144 columns of 500 mm at 2.5 degrees close; eight left out open 2 R sin(10 degrees), R = 500 / (2 sin 1.25 degrees):
  // 3980 mm.
  const ring = judgeWall(plainWall(136, 2.5));
  expect(letsIn(ring, wide(3970))).toBe(true);
  expect(letsIn(ring, wide(3990))).toBe(false);
  expect(letsIn(ring, wide(3970, 9000))).toBe(true);
  expect(letsIn(ring, none)).toBe(true);
});

test('letsIn by a door only where it is wide and high enough', () => {
  // Six columns of a ring of 11.46 m radius span 2 R sin(7.5 degrees) = 2992 mm; eight rows of 500 mm are 4 m high.
  const closed = judgeWall(plainWall(144, 2.5, 13, door(6, 8)));
  expect(letsIn(closed, wide(2980, 4000))).toBe(true);
  expect(letsIn(closed, wide(3000, 4000))).toBe(false);
  expect(letsIn(closed, wide(2980, 4001))).toBe(false);
});

test('letsIn anything where the wall closes round nothing', () => {
  expect(letsIn(judgeWall(plainWall(20, 2.5)), wide(9000, 9000))).toBe(true);
});
