import { expect, test } from 'vitest';
import { paintRun } from '../../../../src/calc/outputs/picture/paint-run';
import { panelLayout } from '../../../../src/calc/outputs/picture/panel-layout';
import { pictureInks, picturePalette } from '../../../../src/calc/outputs/picture/picture-inks';
import { newRaster } from '../../../../src/calc/outputs/raster';
import { cornerPicture, cornerRuns } from '../corner-stage';

const paint = (run: number) => {
  const raster = newRaster(100, 300, picturePalette());
  paintRun(raster, cornerPicture, cornerRuns.runs[run]!);
  return (x: number, y: number) => raster.inks[y * 100 + x]!;
};

/** Knots of the panel of 200 px at y 100 and of that of 100 px at y 0. */
const lower = { x: 10, y: 100 + panelLayout(100, 200).knot.y };
const upper = { x: 10, y: panelLayout(100, 100).knot.y };

test('paintRun draws from knot to knot: a diamond at the entry, a square at the end', () => {
  const upwards = paint(0);
  expect(upwards(lower.x, lower.y)).toBe(pictureInks.entry);
  expect(upwards(upper.x, upper.y)).toBe(pictureInks.port);
  for (let y = upper.y; y < lower.y - 9; y++) expect(upwards(10, y)).toBe(pictureInks.port);
  const downwards = paint(1);
  expect(downwards(upper.x, upper.y)).toBe(pictureInks.entry);
  expect(downwards(lower.x, lower.y)).toBe(pictureInks.port);
});

/** Pixels of the line's ink in a row. */
const widthAt = (ink: (x: number, y: number) => number, y: number) =>
  Array.from({ length: 100 }, (_, x) => ink(x, y)).filter((one) => one === pictureInks.port).length;

test('paintRun points its arrow along the run: narrow ahead, wide behind', () => {
  const middle = Math.round((lower.y + upper.y) / 2);
  const upwards = paint(0);
  expect(widthAt(upwards, middle - 3)).toBeLessThan(widthAt(upwards, middle + 3));
  const downwards = paint(1);
  expect(widthAt(downwards, middle - 3)).toBeGreaterThan(widthAt(downwards, middle + 3));
});

test('paintRun of a single panel is its entry alone', () => {
  const ink = paint(2);
  const { knot } = panelLayout(100, 100);
  expect(ink(knot.x, 100 + knot.y)).toBe(pictureInks.entry);
  expect(widthAt(ink, 100 + knot.y)).toBe(0);
});
