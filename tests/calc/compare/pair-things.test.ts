import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pairThings } from '../../../src/calc/compare/pair-things';
import type { Thing } from '../../../src/calc/compare/thing';

const thing = (name: string, content: string, detail = ''): Thing => ({ name, content, detail });
const newOf = (before: Thing[], after: Thing[]) => [...pairThings(before, after).newOf];

test('pairThings pairs by name before content', () => {
  // 'a' stays 'a' though its content now stands under 'b'; 'b' is new then.
  expect(newOf([thing('a', 'x')], [thing('b', 'x'), thing('a', 'y')])).toEqual([1]);
});

test('pairThings pairs what is left over by content', () => {
  expect(newOf([thing('a', 'x'), thing('b', 'y')], [thing('c', 'y')])).toEqual([-1, 0]);
});

test('pairThings pairs a name that stands twice with what is wholly alike first', () => {
  const before = [thing('', 'x'), thing('', 'y')];
  expect(newOf(before, [thing('', 'y'), thing('', 'x')])).toEqual([1, 0]);
  // 'x' is the same on both sides, so that 'y' became 'w'.
  expect(newOf(before, [thing('', 'w'), thing('', 'x')])).toEqual([1, 0]);
});

test('pairThings pairs each thing once', () => {
  expect(newOf([thing('a', 'x'), thing('b', 'x'), thing('c', 'x')], [thing('d', 'x'), thing('e', 'x')])).toEqual([
    0, 1, -1,
  ]);
});

const letter = fc.constantFrom('a', 'b', 'c', 'd');
const things = fc.array(fc.record({ name: letter, content: letter, detail: fc.constantFrom('', '1') }), {
  maxLength: 8,
});

test('pairThings pairs the same things whichever of the lists is the old one', () => {
  fc.assert(
    fc.property(things, things, (before, after) => {
      const there = pairThings(before, after);
      const back = pairThings(after, before);
      expect(back.newOf).toEqual(there.oldOf);
      expect(back.oldOf).toEqual(there.newOf);
      there.newOf.forEach((place, own) => {
        if (place >= 0) expect(there.oldOf[place]).toBe(own);
      });
    }),
  );
});

test('pairThings pairs the same things whatever the order of the lists', () => {
  const shuffle = (list: Thing[]) => fc.shuffledSubarray(list, { minLength: list.length });
  const cases = fc.tuple(things, things).chain(([before, after]) => {
    return fc.tuple(fc.constant(before), fc.constant(after), shuffle(before), shuffle(after));
  });
  const pairs = (before: Thing[], after: Thing[]) =>
    newOf(before, after)
      .map((place, own) => JSON.stringify([before[own], after[place]]))
      .sort();
  fc.assert(
    fc.property(cases, ([before, after, otherBefore, otherAfter]) => {
      expect(pairs(otherBefore, otherAfter)).toEqual(pairs(before, after));
    }),
  );
});

test('pairThings pairs a list with itself in any order, each with one wholly alike', () => {
  const shuffled = things.chain((list) => {
    return fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length }));
  });
  fc.assert(
    fc.property(shuffled, ([before, after]) => {
      pairThings(before, after).newOf.forEach((place, own) => {
        expect(after[place]).toEqual(before[own]);
      });
    }),
  );
});
