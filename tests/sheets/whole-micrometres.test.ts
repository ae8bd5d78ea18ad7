import { expect, test } from 'vitest';
import { wholeMicrometres } from '../../src/sheets/whole-micrometres';

test('wholeMicrometres rounds to thousandths of a millimetre', () => {
  expect([0.1 + 0.2, 1234.5678, -1234.5678].map(wholeMicrometres)).toEqual([0.3, 1234.568, -1234.568]);
});

test('wholeMicrometres has no minus zero', () => {
  for (const mm of [-0, -0.0001]) expect(Object.is(wholeMicrometres(mm), 0)).toBe(true);
});
