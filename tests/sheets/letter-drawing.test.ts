import { expect, test } from 'vitest';
import { letterDrawing } from '../../src/sheets/letter-drawing';
import { smallDrawing } from '../files/small-drawing';

const window = { leftMm: 0, topMm: 0, rightMm: 6000, bottomMm: 4000 };

test('letterDrawing puts texts in the middle of their points, as large as the scale asks, with layer and pen', () => {
  const [dimension, named, upright] = letterDrawing(smallDrawing('Ann'), window, 50);
  // Letters of 2 mm at 1:50 are 100 mm.
  expect(named).toMatchObject({ text: 'Ann', layer: 'zones', pen: 'ink', heightMm: 100, turned: false });
  expect([named!.xMm, named!.yMm]).toEqual([expect.closeTo(3000, 6), expect.closeTo(1000, 6)]);
  expect(upright).toMatchObject({ text: 'upright', turned: true });
  expect(dimension).toMatchObject({ text: '4000 mm', layer: 'dimensions', heightMm: 125 });
  // Above the middle of its line, which runs at 2900 from 1000 to 5000.
  expect(dimension!.xMm).toBeCloseTo(3000, 6);
  expect(dimension!.yMm).toBeLessThan(2900 - 125 / 2);
});

test('letterDrawing leaves out what has no room, and gives dimensions the first choice', () => {
  // At 1:300 small letters are 600 mm high: the name of 24 signs is longer than the window, the upright word would
  // cross the dimension's.
  const texts = letterDrawing(smallDrawing(), window, 300).map(({ text }) => text);
  expect(texts).toEqual(['4000 mm']);
});
