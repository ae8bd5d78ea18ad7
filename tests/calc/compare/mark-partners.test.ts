import { expect, test } from 'vitest';
import { markPartners } from '../../../src/calc/compare/mark-partners';

test('markPartners marks partners alike and everything else apart', () => {
  // Old 0 is new 1; old 1 is gone; new 0 and 2 are new.
  const { before, after } = markPartners({ newOf: Int32Array.of(1, -1), oldOf: Int32Array.of(-1, 0, -1) });
  expect(before[0]).toBe(after[1]);
  expect(new Set([...before, ...after]).size).toBe(4);
});
