import { expect, test } from 'vitest';
import { createWebLock, unguardedLock } from '../../../src/ui/storage/document-lock';
import { createFakeLocks } from './fake-locks';

const settle = () => new Promise((resolve) => setTimeout(resolve));

test('claim gives the first tab the document and the second when the first lets go', async () => {
  const lock = createWebLock(createFakeLocks());
  const turns: string[] = [];
  const first = await lock.claim('k', () => turns.push('first'));
  const second = await lock.claim('k', () => turns.push('second'));
  expect([first.held, second.held]).toEqual([true, false]);
  expect(turns).toEqual(['first']);
  first.release();
  await settle();
  expect(turns).toEqual(['first', 'second']);
});

test('claim of another document is free', async () => {
  const lock = createWebLock(createFakeLocks());
  await lock.claim('k', () => undefined);
  expect((await lock.claim('other', () => undefined)).held).toBe(true);
});

test('a tab that stops waiting is passed over', async () => {
  const lock = createWebLock(createFakeLocks());
  const turns: string[] = [];
  const first = await lock.claim('k', () => turns.push('first'));
  const second = await lock.claim('k', () => turns.push('second'));
  await lock.claim('k', () => turns.push('third'));
  second.release();
  first.release();
  await settle();
  expect(turns).toEqual(['first', 'third']);
});

test('without locks every tab may write', async () => {
  expect((await unguardedLock.claim('k', () => undefined)).held).toBe(true);
});
