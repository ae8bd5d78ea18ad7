import { expect, test } from 'vitest';
import { drawText } from '../../../../src/calc/outputs/picture/draw-text';
import { paintReturn } from '../../../../src/calc/outputs/picture/paint-return';
import { paintRun } from '../../../../src/calc/outputs/picture/paint-run';
import { paintWords } from '../../../../src/calc/outputs/picture/paint-words';
import { panelLayout } from '../../../../src/calc/outputs/picture/panel-layout';
import { pictureInks, picturePalette } from '../../../../src/calc/outputs/picture/picture-inks';
import { newRaster, type Raster } from '../../../../src/calc/outputs/raster';
import { cornerPicture, cornerRuns } from '../corner-stage';

const side = 192;
const spot = { panel: 0, x: 0, y: 0, width: side, height: side };
const blank = (size = side) => newRaster(size, size, picturePalette());
const paint = (port = '3B-05', until = Infinity, size = side): Raster => {
  const raster = blank(size);
  paintReturn(raster, { ...spot, width: size, height: size }, port, until);
  return raster;
};
const ink = ({ inks, width }: Raster, x: number, y: number) => inks[y * width + x];
const columnsOf = ({ inks, width }: Raster) =>
  [...inks.entries()].filter(([, one]) => one === pictureInks.returns).map(([at]) => at % width);

test('paintReturn sets the port on a plate beside the knot, below the words and above the ramps', () => {
  // 192 px: knot at x 19 (0.1 x 192); words from 38 (0.2) to 184 (0.96), down to 119 (0.62); stripes of 5 px (0.026), so the
  // ramps begin at 191 - 25 = 166 and the knot stands at (119 + 166) / 2 = 142.5, rounded 143.
  // '>3B-05': 6 signs of 4 and 5 gaps of 2 are 34 units. At 3 px: 102 + pen 3 + margins 6 = 111 wide, 18 + 3 + 6 = 27 high; at
  // 4 px it would be 136 + 3 + 8 = 147, wider than 146.
  const raster = paint();
  const top = 143 - 13;
  const expected = blank();
  drawText(expected, '>3B-05', 38 + 3, top + 3, 3, pictureInks.name);
  for (let y = 0; y < side; y++) {
    for (let x = 38; x < side; x++) {
      const isPlate = x < 38 + 111 && y >= top && y < top + 27;
      const isLetter = ink(expected, x, y) === pictureInks.name;
      expect(ink(raster, x, y), `${x}, ${y}`).toBe(isPlate && !isLetter ? pictureInks.returns : pictureInks.blank);
    }
  }
  // The bar from the knot: pen of 4 px (192 / 44), from one above the knot's row.
  expect([142, 145, 141, 146].map((y) => ink(raster, 25, y))).toEqual([8, 8, 0, 0]);
});

test('paintReturn ends before the pixel that it is given', () => {
  expect(Math.max(...columnsOf(paint('3B-05', 110)))).toBeLessThan(110);
  // '>3B-05' at 1 px is 37 wide; between 38 and 60 there is no room for letters, and the bar tells alone.
  expect(Math.max(...columnsOf(paint('3B-05', 60)))).toBe(37);
});

test.each([84, 104, 128, 176, 256, 320])(
  'paintReturn on a panel of %i px has letters and leaves the words as they are',
  (size) => {
    const raster = paint('12B-10', Infinity, size);
    expect(raster.inks).toContain(pictureInks.returns);
    const { words, rampY } = panelLayout(size, size);
    const rows = [...raster.inks.entries()].filter(([, one]) => one !== 0).map(([at]) => Math.floor(at / size));
    expect(Math.min(...rows)).toBeGreaterThanOrEqual(words.y + words.height);
    expect(Math.max(...rows)).toBeLessThan(rampY);
    expect(Math.max(...columnsOf(raster))).toBeGreaterThan(words.x);
    const named = blank(size);
    const name = { name: 'A C38 R9', port: '12B-09', place: 9 };
    paintWords(named, { ...spot, width: size, height: size }, name, 0);
    const both = paint('12B-10', Infinity, size);
    paintWords(both, { ...spot, width: size, height: size }, name, 0);
    for (const [at, one] of named.inks.entries()) if (one !== 0) expect(both.inks[at]).toBe(one);
  },
);

/** The corner's first run, up the first column, with a return. */
function returning(count: number) {
  const raster = newRaster(100, 300, picturePalette());
  paintRun(raster, cornerPicture, { ...cornerRuns.runs[0]!, count, returnPort: '1A-02' });
  return raster;
}

test('paintRun ends a run that returns in the ink of returns, with the plate on its last panel alone', () => {
  const raster = returning(2);
  const { knot } = panelLayout(100, 100);
  expect(ink(raster, knot.x, knot.y)).toBe(pictureInks.returns);
  expect(ink(raster, 10, 100 + panelLayout(100, 200).knot.y)).toBe(pictureInks.entry);
  const rows = [...raster.inks.entries()]
    .filter(([, one]) => one === pictureInks.returns)
    .map(([at]) => Math.floor(at / 100));
  expect(Math.max(...rows)).toBeLessThan(100);
});

test('paintRun of a single panel that returns keeps its diamond and names the port', () => {
  const raster = returning(1);
  const { knot } = panelLayout(100, 200);
  expect(ink(raster, knot.x, 100 + knot.y)).toBe(pictureInks.entry);
  expect(raster.inks).toContain(pictureInks.returns);
});

test('paintRun keeps the plate clear of the arrow of a line that comes from the right', () => {
  // Panel 0 at (100, 0) is the first, panel 1 at (0, 0) the last: the line runs leftwards through the last panel.
  const map = { ...cornerPicture.map, x: Uint32Array.of(100, 0, 0, 0, 0, 0), y: Uint32Array.of(0, 0, 0, 0, 0, 0) };
  const raster = newRaster(200, 100, picturePalette());
  const wall = { ...cornerPicture.surfaces.surfaces[0]!, type: Uint8Array.of(1, 1, 1, 1) };
  const surfaces = { ...cornerPicture.surfaces, surfaces: [wall, cornerPicture.surfaces.surfaces[1]!] };
  paintRun(
    raster,
    { ...cornerPicture, surfaces, map },
    {
      ...cornerRuns.runs[0]!,
      returnPort: '1A-02',
    },
  );
  const { knot } = panelLayout(100, 100);
  // Knots at x 10 and 110: the arrow's head of 5 pens of 2 px reaches from 55 to 65.
  expect(Math.max(...columnsOf(raster))).toBeLessThan(55);
  expect(ink(raster, 60, knot.y)).toBe(pictureInks.port);
});
