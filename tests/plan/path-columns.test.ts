import { expect, test } from 'vitest';
import { pathColumns } from '../../src/plan/path-columns';

test('pathColumns adds the segments; none have no column', () => {
  expect(pathColumns([{ columns: 3 }, { columns: 4 }])).toBe(7);
  expect(pathColumns([])).toBe(0);
});
