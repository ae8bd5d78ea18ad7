import { expect, test } from 'vitest';
import { joinBytes } from '../../src/files/join-bytes';

test('joinBytes sets pieces one after the other and takes none at all', () => {
  expect([...joinBytes([Uint8Array.of(1, 2), Uint8Array.of(), Uint8Array.of(3)])]).toEqual([1, 2, 3]);
  expect(joinBytes([]).length).toBe(0);
});
