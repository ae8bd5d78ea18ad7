import { expect, test } from 'vitest';
import { keptWords } from '../../../src/ui/bench/kept-words';
import type { Filed } from '../../../src/ui/storage/desk-state';

const atMs = new Date(2026, 0, 5, 14, 6).getTime();
const filed = { atMs: new Date(2026, 0, 5, 13, 41).getTime() } as Filed;

test('keptWords say when it was kept and when it went to a file', () => {
  expect(keptWords({ kind: 'kept', atMs }, false, filed, 'en-GB')).toEqual({
    text: 'Kept in this browser 14:06. In a file 13:41.',
    marked: false,
  });
});

test('keptWords never part a time from its half of the day', () => {
  const { text } = keptWords({ kind: 'kept', atMs }, false, filed, 'en-US');
  expect(text).toBe('Kept in this browser 2:06\u00a0PM. In a file 1:41\u00a0PM.');
});

test('keptWords of what is not kept are marked', () => {
  const failed = { kind: 'failed', trouble: 'full', reason: 'no room' } as const;
  expect(keptWords(failed, false, null, 'en-GB')).toEqual({ text: 'Not kept in this browser.', marked: true });
});

test('keptWords of a tab that follows say so', () => {
  expect(keptWords({ kind: 'changed' }, true, null, 'en-GB').text).toBe('Followed from another tab.');
});
