import { expect, test } from 'vitest';
import { dayOf } from '../../../../src/ui/chapters/revisions/day-of';

test('dayOf gives the day of the place where one is, whatever day it is in Greenwich', () => {
  expect(dayOf(new Date(2026, 10, 25, 0, 5))).toBe('2026-11-25');
  expect(dayOf(new Date(2026, 0, 3, 23, 55))).toBe('2026-01-03');
});
