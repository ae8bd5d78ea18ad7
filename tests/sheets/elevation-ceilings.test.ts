import { expect, test } from 'vitest';
import type { Plan } from '../../src/plan/plan';
import { ceilingsInElevation } from '../../src/sheets/elevation-ceilings';
import { elevationView } from '../../src/sheets/elevation-view';
import { ceilingOf } from '../arbitraries/ceiling-fixture';
import { polylines } from './polylines';

const view = elevationView([], 'front');
/** 8 x 8 panels of 500 about the origin, trim at 6.2 m, 90 mm deep. */
const ceiling = ceilingOf(4000, 0);
const planned = (lowestMm: number, highestMm: number) =>
  [{ id: 'ceiling-b', height: { trimMm: 6200, lowestMm, highestMm } }] as unknown as Plan['ceilings'];

test('ceilingsInElevation draws a ceiling at trim, as wide as its panels and as thick as they are deep', () => {
  const { strokes, levels } = ceilingsInElevation([ceiling], [], view);
  expect(polylines(strokes[0]!.lines)).toEqual([
    [
      [-2000, -6290],
      [2000, -6290],
      [2000, -6200],
      [-2000, -6200],
    ],
  ]);
  expect(levels).toEqual([{ text: 'B trim', heightMm: 6200, fromMm: -2000 }]);
});

test('ceilingsInElevation dashes the ends of its travel where they are not its trim', () => {
  const { strokes, levels } = ceilingsInElevation([ceiling], planned(3000, 7000), view);
  expect(strokes[1]!.dash).toBe('dashed');
  expect(polylines(strokes[1]!.lines).map((line) => line[0]![1])).toEqual([-3000, -7000]);
  expect(levels.map(({ text, heightMm }) => [text, heightMm])).toEqual([
    ['B trim', 6200],
    ['B lowest', 3000],
    ['B highest', 7000],
  ]);
  expect(ceilingsInElevation([ceiling], planned(6200, 6200), view).levels).toHaveLength(1);
});

test('ceilingsInElevation of a ceiling turned by 45 degrees is as wide as its outermost corners', () => {
  const [line] = polylines(ceilingsInElevation([ceilingOf(500, 45)], [], view).strokes[0]!.lines);
  // One panel of 500 on its corner: 500 x sqrt 2 across.
  expect(line![1]![0]! - line![0]![0]!).toBeCloseTo(707.107, 2);
});

test('ceilingsInElevation leaves out a ceiling without panels', () => {
  const none = { ...ceiling, table: { ...ceiling.table, count: 0 } };
  expect(ceilingsInElevation([none], planned(1, 2), view).levels).toEqual([]);
});
