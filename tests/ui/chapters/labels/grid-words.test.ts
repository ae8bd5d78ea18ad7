import { expect, test } from 'vitest';
import { startingGrids } from '../../../../src/sheets/labels/starting-grids';
import { gridWords, startingPlace } from '../../../../src/ui/chapters/labels/grid-words';

const length = (mm: number) => `${Math.round(mm * 10) / 10} mm`;

test('gridWords says paper, columns by rows, and the size of one label', () => {
  expect(gridWords(startingGrids[2]!, length)).toBe('A4, 3 × 8, each 70 mm × 37 mm');
  expect(gridWords({ ...startingGrids[2]!, leftMm: 300 }, length)).toBe('A4, 3 × 8, no room');
});

test('startingPlace finds the grid that one began with, until something is typed', () => {
  for (const [place, grid] of startingGrids.entries()) expect(startingPlace({ ...grid })).toBe(place);
  expect(startingPlace({ ...startingGrids[0]!, topMm: 16 })).toBe(-1);
});
