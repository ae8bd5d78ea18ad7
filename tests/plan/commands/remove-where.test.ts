import { produce } from 'immer';
import { expect, test } from 'vitest';
import { removeWhere } from '../../../src/plan/commands/remove-where';

test('removeWhere takes out all that is named, in place', () => {
  const list = [1, 2, 3, 4, 4, 6];
  removeWhere(list, (n) => n % 2 === 0);
  expect(list).toEqual([1, 3]);
});

test('removeWhere leaves a draft its identity where nothing goes', () => {
  const plan = { list: [{ id: 'a' }] };
  expect(produce(plan, ({ list }) => removeWhere(list, ({ id }) => id === 'b'))).toBe(plan);
});
