import { expect, test } from 'vitest';
import { wallAcrossMm } from '../../../src/calc/walls/wall-across';

// Two columns that end 3 m to the right and 4 m up from where they begin: 5 m apart.
const frontMm = Float64Array.of(1000, 1000, 2500, 1000, 2500, 1000, 4000, 5000);

test('wallAcrossMm takes the inside diameter of a ring, null where the wall has none', () => {
  expect(wallAcrossMm('ring', { insideDiameterMm: 20_000, frontMm })).toBe(20_000);
  expect(wallAcrossMm('ring', { insideDiameterMm: null, frontMm })).toBeNull();
});

test('wallAcrossMm measures a flat wall from end to end', () => {
  expect(wallAcrossMm('flat', { insideDiameterMm: 20_000, frontMm })).toBe(5000);
});
