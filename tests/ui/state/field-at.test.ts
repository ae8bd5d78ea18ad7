import { expect, test } from 'vitest';
import { fieldAt } from '../../../src/ui/state/field-at';

const plan = { walls: [{ path: [{ columns: 7 }] }] };

test('fieldAt follows keys and places', () => {
  expect(fieldAt(plan, ['walls', 0, 'path', 0, 'columns'])).toBe(7);
});

test('fieldAt of what is not there is undefined, inherited names included', () => {
  expect(fieldAt(plan, ['walls', 3, 'path'])).toBeUndefined();
  expect(fieldAt(plan, ['walls', 0, 'toString'])).toBeUndefined();
  expect(fieldAt(plan, ['walls', 0, 'path', 0, 'columns', 'more'])).toBeUndefined();
});
