import { expect, test } from 'vitest';
import { toggleSurface } from '../../../../src/ui/chapters/nodes/toggle-surface';

const surfaces = ['a', 'b', 'c'];

test('toggleSurface takes one out of all, and puts it back to all', () => {
  expect(toggleSurface(null, surfaces, 'b')).toEqual(['a', 'c']);
  expect(toggleSurface(['a', 'c'], surfaces, 'b')).toBeNull();
});

test('toggleSurface marks any set, but never none', () => {
  expect(toggleSurface(['a'], surfaces, 'c')).toEqual(['a', 'c']);
  expect(toggleSurface(['a', 'c'], surfaces, 'a')).toEqual(['c']);
  expect(toggleSurface(['c'], surfaces, 'c')).toEqual(['c']);
});

test('toggleSurface keeps what the file says of a surface that is gone', () => {
  expect(toggleSurface(['a', 'gone'], surfaces, 'b')).toEqual(['a', 'gone', 'b']);
  expect(toggleSurface(['a', 'gone'], surfaces, 'a')).toEqual(['a', 'gone']);
});
