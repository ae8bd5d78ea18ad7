import { expect, test } from 'vitest';
import { latticeSpan } from '../../src/sheets/lattice-span';

test('latticeSpan names the first and the last, and one alone once', () => {
  expect(latticeSpan('C', 1, 13)).toBe('C1 to C13');
  expect(latticeSpan('R', 5, 1)).toBe('R5');
});
