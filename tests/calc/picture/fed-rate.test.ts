import { expect, test } from 'vitest';
import { fedRate } from '../../../src/calc/picture/fed-rate';
import { mode } from '../ports/plain-items';

test('fedRate counts every interleaved picture and stays an exact fraction', () => {
  expect(fedRate(mode(24_000, 10, 3, 1001))).toEqual({ frames: 72_000, seconds: 1001 });
});
