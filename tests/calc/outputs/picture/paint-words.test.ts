import { expect, test } from 'vitest';
import { drawText, textSize, unitForWidth } from '../../../../src/calc/outputs/picture/draw-text';
import { type PanelWords, paintWords } from '../../../../src/calc/outputs/picture/paint-words';
import { panelLayout } from '../../../../src/calc/outputs/picture/panel-layout';
import { pictureInks, picturePalette } from '../../../../src/calc/outputs/picture/picture-inks';
import { newRaster, type Raster } from '../../../../src/calc/outputs/raster';

const side = 192;
const paint = (words: PanelWords, size = side): Raster => {
  const raster = newRaster(size, size, picturePalette());
  paintWords(raster, { panel: 0, x: 0, y: 0, width: size, height: size }, words, 0);
  return raster;
};
const usual = { name: 'A C38 R9', port: '3B-04', place: 5 };

/** Pixels of one ink as a set of places. */
const placesOf = ({ inks }: Raster, ink: number) =>
  new Set([...inks.entries()].filter(([, one]) => one === ink).map(([at]) => at));

test('paintWords writes surface and column above the row, as large as the panel lets it', () => {
  const written = paint(usual);
  const { words } = panelLayout(side, side);
  const unit = unitForWidth('A C38', words.width);
  const expected = newRaster(side, side, picturePalette());
  drawText(expected, 'A C38', words.x, words.y, unit, pictureInks.name);
  const found = placesOf(written, pictureInks.name);
  for (const place of placesOf(expected, pictureInks.name)) expect(found.has(place)).toBe(true);
  // Letters of a sixth of the panel and more can be read from where one sees the whole wall.
  expect(textSize('A C38', unit).height).toBeGreaterThan(side / 6);
});

test('paintWords keeps to the room that it has', () => {
  const { words } = panelLayout(side, side);
  for (const place of placesOf(paint({ ...usual, name: 'A C100 R10', place: 12 }), pictureInks.name)) {
    const [x, y] = [place % side, Math.floor(place / side)];
    expect(x >= words.x && x < words.x + words.width && y >= words.y && y < words.y + words.height).toBe(true);
  }
});

test('paintWords sets the port of an entry on a plate, and of no other', () => {
  expect(placesOf(paint(usual), pictureInks.entry).size).toBe(0);
  expect(placesOf(paint({ ...usual, place: 1 }), pictureInks.entry).size).toBeGreaterThan(500);
});

test('paintWords says of a panel on no port that it is on none', () => {
  const [without, other] = [null, '3B-04'].map((port) =>
    placesOf(paint({ ...usual, port, place: 0 }), pictureInks.port),
  );
  expect(without!.size).toBeGreaterThan(50);
  expect(without).not.toEqual(other);
});

test('paintWords writes the name of an only surface, and on a panel too small for letters nothing', () => {
  expect(placesOf(paint({ ...usual, name: 'C38 R9' }), pictureInks.name).size).toBeGreaterThan(50);
  expect(placesOf(paint(usual, 16), pictureInks.name).size).toBe(0);
});
