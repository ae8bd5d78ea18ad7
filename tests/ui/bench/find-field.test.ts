import { expect, test } from 'vitest';
import { widenPath } from '../../../src/ui/bench/find-field';

test('widenPath goes from the field to the group, one key at a time', () => {
  expect(widenPath('walls[0].path[2].columns')).toEqual([
    'walls[0].path[2].columns',
    'walls[0].path[2]',
    'walls[0].path',
    'walls[0]',
    'walls',
  ]);
  expect(widenPath('name')).toEqual(['name']);
});
