import { expect, test } from 'vitest';
import type { WayFigures } from '../../../../src/calc/runs/run-result';
import { placeMarks } from '../../../../src/ui/chapters/runs/place-marks';

const frame = { wide: 200, high: 120, frame: { left: 20, right: 20, top: 10, bottom: 10 } };
const way = (ports: number, fullestShare: number, figures = 1, chosen = false): WayFigures => ({
  surfaceId: 'a',
  way: { kind: 'folded', wide: ports },
  ports,
  processorsShort: 0,
  fewest: 1,
  most: 1,
  fullestShare,
  highestEntryMm: 0,
  entriesOutOfReach: 0,
  figures,
  cableMm: 0,
  chosen,
});

test('placeMarks puts more ports to the right and more free share higher, inside the frame', () => {
  const { marks, least, across } = placeMarks([way(20, 0.6), way(17, 0.9)], 16, frame);
  // Ports 16 to 20 lie on x 32 to 168, so 17 at 66; free 0.1 to 0.4 on y 98 to 22.
  expect(marks.map(({ x, y }) => [Math.round(x), Math.round(y)])).toEqual([
    [168, 22],
    [66, 98],
  ]);
  expect(Math.round(least)).toBe(32);
  expect(across.map(({ value }) => value)).toEqual([16, 18, 20]);
});

test('placeMarks draws what has more figures larger, and says the way in words', () => {
  const { marks } = placeMarks([way(20, 0.6, 1), way(17, 0.9, 9, true)], 16, frame);
  expect(marks[1]!.radius).toBeGreaterThan(marks[0]!.radius);
  expect(marks[1]).toMatchObject({ isChosen: true, title: expect.stringContaining('17 ports, 10 % free, 9 figures') });
});

test('placeMarks of ways that are all alike stands in the middle, without NaN', () => {
  const { marks, across, upwards } = placeMarks([way(16, 0.5), way(16, 0.5)], 16, frame);
  expect(marks.map(({ x, y }) => [x, y])).toEqual([
    [100, 60],
    [100, 60],
  ]);
  expect([across.length, upwards.length]).toEqual([1, 1]);
});
