import { expect, test } from 'vitest';
import { carriage } from '../../../src/calc/ports/carriage';

test('carriage picks the bits of the depth', () => {
  const padded = { at8: 24, at10: 48, at12: 49 };
  expect([carriage(padded, 8), carriage(padded, 10), carriage(padded, 12)]).toEqual([24, 48, 49]);
});
