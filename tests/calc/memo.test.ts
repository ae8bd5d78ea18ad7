import { expect, test } from 'vitest';
import { memo, memoView } from '../../src/calc/memo';

test('memo answers records of the same parts from memory, and others anew', () => {
  let calls = 0;
  const twice = memo(({ figure }: { figure: number }) => {
    calls++;
    return { double: figure * 2 };
  });
  expect(twice({ figure: 3 })).toBe(twice({ figure: 3 }));
  expect(twice({ figure: 4 })).toEqual({ double: 8 });
  expect(calls).toBe(2);
});

test('memoView gives the list of before where only another part of a record changed', () => {
  const view = memoView(({ size }: { size: object; price: number }) => ({ size }));
  const size = { widthMm: 500 };
  const first = view([{ size, price: 1 }]);
  expect(view([{ size, price: 2 }])).toBe(first);
  expect(view([{ size: { widthMm: 600 }, price: 2 }])).not.toBe(first);
});
