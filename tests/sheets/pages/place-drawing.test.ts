import { expect, test } from 'vitest';
import { placeDrawing } from '../../../src/sheets/pages/place-drawing';
import { smallDrawing } from '../../files/small-drawing';
import { polylines } from '../polylines';
import { outside } from './page-boxes';

/** The drawing's square of 4 x 2 m from (1000, 500), with a metre of air, at 1:50: 20 mm on paper. */
const placing = {
  window: { leftMm: 0, topMm: -500, rightMm: 6000, bottomMm: 3900 },
  leftMm: 30,
  topMm: 40,
  reduction: 50,
  inks: 'colour',
} as const;
/** In mm of the paper: 6 m at 1:50 are 120 mm, 4.4 m are 88. */
const onPaper = { leftMm: 30, topMm: 40, rightMm: 150, bottomMm: 128 };

test('placeDrawing puts lines on paper to scale', () => {
  const items = placeDrawing(smallDrawing('Ann'), placing);
  const [edge] = items.filter((item) => item.kind === 'path' && item.stroke?.widthMm === 0.7);
  expect(edge!.kind === 'path' && polylines(edge!.lines)).toEqual([
    [
      [50, 60],
      [130, 60],
      [130, 100],
      [50, 100],
    ],
  ]);
  expect(outside(items, onPaper)).toEqual([]);
});

test('placeDrawing leaves out what is too fine for the scale, and draws dimensions with their ticks', () => {
  const items = placeDrawing(smallDrawing('Ann'), placing);
  const widths = items.flatMap((item) => (item.kind === 'path' && item.stroke !== null ? [item.stroke.widthMm] : []));
  // Cut edge, limit, dimension; not the hair line that only shows at a larger scale.
  expect(widths).toEqual([0.7, 0.35, 0.25]);
});

test('placeDrawing writes texts in the face of fixed width with a rim, as high as paper style says', () => {
  const texts = placeDrawing(smallDrawing('Ann سلام'), placing).flatMap((item) => (item.kind === 'text' ? [item] : []));
  expect(texts.map(({ text }) => text)).toEqual(['4000 mm', 'Ann ◊◊◊◊', 'upright']);
  expect(texts.every(({ face, rim, align }) => face === 'mono' && rim && align === 'middle')).toBe(true);
  expect(texts.map(({ sizeMm, turned }) => [sizeMm, turned])).toEqual([
    [2.5, false],
    [2, false],
    [2, true],
  ]);
  // The middle of the capitals is where the label stands: (3000, 1000) is (90, 70) on paper.
  expect(texts[1]!.xMm).toBeCloseTo(90, 3);
  expect(texts[1]!.yMm).toBeCloseTo(70 + (2 * 0.698) / 2, 2);
});

test('placeDrawing in black leaves tints out and draws every pen without colour', () => {
  const colours = placeDrawing(smallDrawing('Ann'), { ...placing, inks: 'black' }).flatMap((item) =>
    item.kind === 'path' ? [item.fill, item.stroke?.colour ?? null] : item.kind === 'text' ? [item.colour] : [],
  );
  for (const colour of colours) if (colour !== null) expect(colour).toMatch(/^#(..)\1\1$/);
  const tinted = placeDrawing(smallDrawing('Ann'), placing).flatMap((item) =>
    item.kind === 'path' && item.fill !== null ? [item.fill] : [],
  );
  expect(tinted).toEqual(['#ffffff', '#f7ecbe', '#0b4fa8']);
});
