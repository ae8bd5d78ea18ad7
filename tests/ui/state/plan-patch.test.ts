import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyPatch, diffPlan } from '../../../src/ui/state/plan-patch';

/** What a worker receives: a copy that shares nothing with the page. */
const posted = <T>(value: T): T => structuredClone(value);

test('diffPlan of a plan and itself says that nothing changed', () => {
  const plan = { walls: [{ id: 'a' }] };
  expect(diffPlan(plan, plan)).toEqual({ kind: 'same' });
});

test('applyPatch keeps the identity of what did not change, so that memos hold', () => {
  const before = {
    name: 'one',
    walls: [
      { id: 'a', rows: 3 },
      { id: 'b', rows: 3 },
    ],
    power: { supply: { volts: 230 } },
  };
  const after = { ...before, walls: [before.walls[0]!, { id: 'b', rows: 4 }] };
  const there = posted(before);
  const next = applyPatch(there, posted(diffPlan(before, after)));
  expect(next).toEqual(after);
  expect(next.power).toBe(there.power);
  expect(next.walls[0]).toBe(there.walls[0]);
});

test('applyPatch follows elements that moved when one is taken out in front of them', () => {
  const before = { walls: [{ id: 'a' }, { id: 'b' }, { id: 'c' }] };
  const after = { walls: before.walls.slice(1) };
  const there = posted(before);
  const next = applyPatch(there, posted(diffPlan(before, after)));
  expect(next.walls).toEqual([{ id: 'b' }, { id: 'c' }]);
  expect(next.walls[0]).toBe(there.walls[1]);
  expect(next.walls[1]).toBe(there.walls[2]);
});

test('diffPlan replaces a record whose keys differ as a whole', () => {
  const before = { outline: { kind: 'circle', diameterMm: 10 } };
  const after = { outline: { kind: 'rectangle', widthMm: 1, depthMm: 2 } };
  expect(applyPatch(posted(before), posted(diffPlan(before, after)))).toEqual(after);
});

const document = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 3 },
    fc.oneof(fc.integer(), fc.string(), fc.boolean(), fc.constant(null)),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), tie('value'), { noNullPrototype: true }),
  ),
})).value;

test('applying the patch of any two documents gives the second', () => {
  fc.assert(
    fc.property(document, document, (before, after) => {
      expect(applyPatch(posted(before), posted(diffPlan(before, after)))).toEqual(after);
    }),
  );
});

test('applying the patch of a document with shared parts gives the second', () => {
  fc.assert(
    fc.property(
      fc.array(document, { maxLength: 5 }),
      fc.array(fc.nat(8), { maxLength: 6 }),
      document,
      (parts, picks, one) => {
        const before = { list: parts, one: null as unknown };
        const after = { list: picks.map((pick) => parts[pick] ?? one), one };
        expect(applyPatch(posted(before), posted(diffPlan(before, after)))).toEqual(after);
      },
    ),
  );
});
