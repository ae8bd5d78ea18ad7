import { expect, test } from 'vitest';
import { z } from 'zod';
import { uniqueList } from '../../src/plan/unique-list';

const entry = z.strictObject({ id: z.string(), size: z.number() });

test('uniqueList takes entries whose key differs', () => {
  const list = [
    { id: 'a', size: 1 },
    { id: 'b', size: 1 },
  ];
  expect(uniqueList(entry, 2).parse(list)).toEqual(list);
});

test('uniqueList names the place of the one that repeats a key', () => {
  const list = [1, 2, 3].map((size) => ({ id: size === 3 ? 'id-1' : `id-${size}`, size }));
  const [issue] = uniqueList(entry, 5).safeParse(list).error!.issues;
  expect(issue).toMatchObject({ path: [2, 'id'], message: `'id-1' stands here twice` });
});

test('uniqueList goes by another key where told, and keeps its length', () => {
  const twins = [
    { id: 'a', size: 1 },
    { id: 'b', size: 1 },
  ];
  expect(uniqueList(entry, 5, 'size').safeParse(twins).success).toBe(false);
  expect(uniqueList(entry, 1).safeParse(twins).success).toBe(false);
});
