import { expect, test } from 'vitest';
import { countByType } from '../../../src/calc/picture/count-by-type';
import { plainSurface, plainType } from '../zones/plain-surface';

test('countByType counts the panels of each type in the order of the types, holes left out', () => {
  const wall = plainSurface({
    columns: 3,
    bands: [
      { type: plainType(200), rows: 2 },
      { type: plainType(100), rows: 1 },
    ],
    isHole: (column, row) => column === 2 && row === 1,
  });
  expect(countByType(wall)).toEqual([5, 3]);
});
