import { expect, it } from 'vitest';
import { outlineFromAbove } from '../../src/sheets/outline-from-above';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { polylines } from './polylines';

const parts = stageFixture({ columns: 4, rows: 3, jointDeg: 0, ceilingDiameterMm: 2000 });

it('outlineFromAbove draws a wall column once, whichever and however many of its panels are asked for', () => {
  const column = [
    [-500, 0],
    [0, 0],
    [0, -90],
    [-500, -90],
  ];
  expect(polylines(outlineFromAbove(parts, [3]))).toEqual([column]);
  expect(polylines(outlineFromAbove(parts, [3, 4, 5]))).toEqual([column]);
  expect(polylines(outlineFromAbove(parts, [0, 3]))).toHaveLength(2);
});

it('outlineFromAbove draws each panel of a ceiling, 500 mm about its centre', () => {
  const ceiling = parts.surfaces.surfaces[1]!;
  const [corners] = polylines(outlineFromAbove(parts, [12 + 5]));
  const xs = corners!.map(([x]) => x!);
  const ys = corners!.map(([, y]) => y!);
  expect([Math.min(...xs), Math.max(...xs)]).toEqual([ceiling.xMm[5]! - 250, ceiling.xMm[5]! + 250]);
  expect([Math.min(...ys), Math.max(...ys)]).toEqual([-ceiling.yMm[5]! - 250, -ceiling.yMm[5]! + 250]);
});

it('outlineFromAbove draws nothing for panels that are not there', () => {
  expect(outlineFromAbove(parts, [-1, 999]).ends).toHaveLength(0);
});
