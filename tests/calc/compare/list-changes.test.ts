import { expect, test } from 'vitest';
import { listChanges } from '../../../src/calc/compare/list-changes';
import { pairThings } from '../../../src/calc/compare/pair-things';
import type { ThingList } from '../../../src/calc/compare/thing';

/** Things by name, content and detail; what is said is both as they stand. */
function listOf(...rows: readonly (readonly [name: string, content: string, detail: string])[]): ThingList {
  return {
    things: rows.map(([name, content, detail]) => ({ name, content, detail })),
    sayContent: (index) => (rows[index]![1] === '' ? [] : [rows[index]![1]]),
    sayDetail: (index) => (rows[index]![2] === '' ? [] : [rows[index]![2]]),
  };
}

const changesOf = (before: ThingList, after: ThingList) => {
  return listChanges('port', before, after, pairThings(before.things, after.things));
};

test('listChanges says nothing of what is the same', () => {
  expect(changesOf(listOf(['a', 'x', 'L1']), listOf(['a', 'x', 'L1']))).toEqual([]);
});

test('listChanges says all of what was added and removed', () => {
  expect(changesOf(listOf(['a', 'x', 'L1']), listOf(['b', 'y', '']))).toEqual([
    { kind: 'removed', what: 'port', name: 'a', before: ['x', ', ', 'L1'], after: null },
    { kind: 'added', what: 'port', name: 'b', before: null, after: ['y'] },
  ]);
});

test('listChanges says of what moved its content, and its detail where that is another one too', () => {
  const moved = { kind: 'moved', what: 'port', name: 'a' };
  expect(changesOf(listOf(['a', 'x', 'L1']), listOf(['a', 'y', 'L1']))).toEqual([
    { ...moved, before: ['x'], after: ['y'] },
  ]);
  expect(changesOf(listOf(['a', 'x', 'L1']), listOf(['a', 'y', 'L2']))).toEqual([
    { ...moved, before: ['x', ', ', 'L1'], after: ['y', ', ', 'L2'] },
  ]);
});

test('listChanges says of what changed its detail, null where there was none', () => {
  expect(changesOf(listOf(['a', 'x', '']), listOf(['a', 'x', 'L2']))).toEqual([
    { kind: 'changed', what: 'port', name: 'a', before: null, after: ['L2'] },
  ]);
});

test('listChanges says of what was renamed both names', () => {
  expect(changesOf(listOf(['a', 'x', 'L1']), listOf(['b', 'x', 'L2']))).toEqual([
    { kind: 'renamed', what: 'port', name: 'b', before: ['a'], after: ['b'] },
  ]);
});

test('listChanges says a detail alone where there is no content to say', () => {
  expect(changesOf(listOf(), listOf(['a', '', '7']))).toMatchObject([{ kind: 'added', after: ['7'] }]);
});
