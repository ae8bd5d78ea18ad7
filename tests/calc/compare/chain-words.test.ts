import { expect, test } from 'vitest';
import { chainWords } from '../../../src/calc/compare/chain-words';
import { plainSurface, plainType } from '../zones/plain-surface';

const bands = [{ type: plainType(200), rows: 3 }];
const a = plainSurface({ columns: 4, bands });
const alone = { surfaces: [a], offsets: [0], total: 12 };

// Panels are numbered column by column, rows from the floor: 0 is C1 R1, 2 is C1 R3, 3 is C2 R1, 11 is C4 R3.
test.each([
  [[0, 1, 2, 5, 4, 3], 'C1 R1 to C1 R3, C2 R3 to C2 R1'],
  [[0, 3, 6, 9], 'C1 R1 to C4 R1'],
  [[10, 7, 4], 'C4 R2 to C2 R2'],
  [[0, 1, 4], 'C1 R1 to C1 R2, C2 R2'],
  [[0, 2, 11], 'C1 R1, C1 R3, C4 R3'],
  [[0, 1, 0], 'C1 R1 to C1 R2, C1 R1'],
  [[5], 'C2 R3'],
  [[], ''],
])('chainWords of the panels %j is %s', (panels, words) => {
  expect(chainWords(alone, panels)).toBe(words);
});

test('chainWords names the surface where there are several, and breaks a stretch between them', () => {
  const b = plainSurface({ columns: 1, bands, letter: 'B' });
  const both = { surfaces: [a, b], offsets: [0, 12], total: 15 };
  expect(chainWords(both, [0, 1, 13, 14])).toBe('A C1 R1 to A C1 R2, B C1 R2 to B C1 R3');
});
