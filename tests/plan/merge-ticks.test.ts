import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Tick } from '../../src/plan/build-log';
import { compareTicks, mergeTicks } from '../../src/plan/merge-ticks';
import { tick, ticks } from '../arbitraries/tick';

const wired: Tick = { step: 'wired', of: 'port', name: '3B-04', done: true, who: 'Ada', atMs: 1000 };

test('mergeTicks gives the same list whichever list comes first, however they are grouped, and however often they are merged', () => {
  fc.assert(
    fc.property(ticks, ticks, ticks, (a, b, c) => {
      const ab = mergeTicks(a, b);
      expect(mergeTicks(b, a)).toEqual(ab);
      expect(mergeTicks(ab, c)).toEqual(mergeTicks(a, mergeTicks(b, c)));
      expect(mergeTicks(ab, b)).toBe(ab);
      expect(mergeTicks(ab, ab)).toBe(ab);
    }),
  );
});

test('mergeTicks loses no tick of either side, makes none up and holds each once', () => {
  fc.assert(
    fc.property(ticks, ticks, (a, b) => {
      const texts = mergeTicks(a, b).map((one) => JSON.stringify(one));
      expect(new Set(texts)).toEqual(new Set([...a, ...b].map((one) => JSON.stringify(one))));
      expect(new Set(texts).size).toBe(texts.length);
    }),
  );
});

test('mergeTicks puts the oldest first, and adds what two phones ticked apart from each other', () => {
  const column: Tick = { step: 'stands', of: 'column', name: 'A C38', done: true, who: 'Bo', atMs: 900 };
  expect(mergeTicks([wired], [column])).toEqual([column, wired]);
});

test('mergeTicks answers with the very list where there is nothing to add', () => {
  const list = [wired];
  expect(mergeTicks(list, [])).toBe(list);
  expect(mergeTicks(list, [{ ...wired }])).toBe(list);
});

test('compareTicks goes by time, then by who, then puts a tick before its taking back', () => {
  const later = { ...wired, atMs: 1001, who: 'Aa', done: false };
  const byBo = { ...wired, who: 'Bo' };
  const back = { ...wired, done: false };
  expect([byBo, later, back, wired].sort(compareTicks)).toEqual([wired, back, byBo, later]);
});

test('compareTicks calls no two ticks equal that differ, and turns round when they are swapped', () => {
  fc.assert(
    fc.property(tick, tick, (a, b) => {
      const order = Math.sign(compareTicks(a, b));
      expect(order === 0).toBe(JSON.stringify(a) === JSON.stringify(b));
      expect(Math.sign(compareTicks(b, a))).toBe(-order + 0);
    }),
  );
});
