import { expect, test } from 'vitest';
import { ruleBoxes, ruleLines } from '../../../src/sheets/pages/rule-lines';
import { polylines } from '../polylines';

const stroke = { colour: '#000000', widthMm: 0.25, dashesMm: [] };

test('ruleLines draws each line by itself, not filled', () => {
  const {
    lines,
    fill,
    stroke: drawn,
  } = ruleLines(
    [
      [0, 0, 10, 0],
      [0, 5, 10, 5],
    ],
    stroke,
  );
  expect(polylines(lines)).toEqual([
    [
      [0, 0],
      [10, 0],
    ],
    [
      [0, 5],
      [10, 5],
    ],
  ]);
  expect([lines.closed, fill, drawn]).toEqual([false, null, stroke]);
});

test('ruleBoxes draws closed rectangles', () => {
  const { lines } = ruleBoxes([{ leftMm: 1, topMm: 2, rightMm: 3, bottomMm: 4 }], stroke);
  expect(polylines(lines)).toEqual([
    [
      [1, 2],
      [3, 2],
      [3, 4],
      [1, 4],
    ],
  ]);
  expect(lines.closed).toBe(true);
});
