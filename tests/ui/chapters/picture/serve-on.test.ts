import { expect, test } from 'vitest';
import { serveOn } from '../../../../src/ui/chapters/picture/serve-on';

const all = ['wall', 'ceiling', 'window'];

test('serveOn leaves one out of every surface, and takes it in again as every surface', () => {
  expect(serveOn(null, all, 'ceiling', false)).toEqual(['wall', 'window']);
  expect(serveOn(['wall', 'window'], all, 'ceiling', true)).toBeNull();
  expect(serveOn(['wall'], all, 'window', true)).toEqual(['wall', 'window']);
});

test('serveOn keeps the last surface, and drops those that are gone', () => {
  expect(serveOn(['wall'], all, 'wall', false)).toEqual(['wall']);
  expect(serveOn(['gone'], all, 'wall', true)).toEqual(['wall']);
  expect(serveOn(['gone', 'wall'], all, 'ceiling', true)).toEqual(['wall', 'ceiling']);
});
