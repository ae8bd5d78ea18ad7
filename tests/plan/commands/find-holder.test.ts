import { expect, test } from 'vitest';
import { findHolder, findList } from '../../../src/plan/commands/find-holder';

const root = { walls: [{ path: [{ columns: 4 }] }], note: 'x' };

test('findHolder gives what holds the last key', () => {
  expect(findHolder(root, ['note'])).toEqual({ holder: root, key: 'note' });
  expect(findHolder(root, ['walls', 0, 'path', 0, 'columns'])?.holder).toBe(root.walls[0]!.path[0]);
});

test.each<[(string | number)[]]>([
  [[]],
  [['gone']],
  [['note', 0]],
  [['note', 'length']],
  [['walls', 1]],
  [['walls', -1]],
  [['walls', 0.5]],
  [['walls', '0']],
  [['walls', 'length']],
  [['toString']],
  [['__proto__', 'polluted']],
  [['walls', 0, 'constructor', 'prototype']],
])('findHolder finds no field at %j', (path) => {
  expect(findHolder(root, path)).toBeUndefined();
});

test('findList gives lists only', () => {
  expect(findList(root, ['walls', 0, 'path'])).toBe(root.walls[0]!.path);
  expect(findList(root, ['note'])).toBeUndefined();
  expect(findList(root, ['gone'])).toBeUndefined();
  expect(findList(root, [])).toBeUndefined();
});
