import { expect, test } from 'vitest';
import { wayKey } from '../../../src/calc/runs/way-key';

test('wayKey tells ways apart by all that they say', () => {
  const keys = [
    wayKey({ kind: 'columns' }),
    wayKey({ kind: 'rows' }),
    wayKey({ kind: 'free' }),
    wayKey({ kind: 'folded', wide: 2 }),
    wayKey({ kind: 'folded', wide: 3 }),
    wayKey({ kind: 'split', aboveRow: 2, wide: 3 }),
    wayKey({ kind: 'split', aboveRow: 3, wide: 2 }),
    wayKey({ kind: 'split', aboveRow: 3, wide: 3 }),
  ];
  expect(new Set(keys).size).toBe(keys.length);
  expect(wayKey({ kind: 'folded', wide: 2 })).toBe(wayKey({ wide: 2, kind: 'folded' }));
});
