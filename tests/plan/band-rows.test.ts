import { expect, test } from 'vitest';
import { bandRows } from '../../src/plan/band-rows';

test('bandRows adds the bands from the floor up', () => {
  expect(bandRows([{ rows: 6 }, { rows: 1 }, { rows: 2 }])).toBe(9);
});
