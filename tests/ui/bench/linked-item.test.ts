import { expect, test } from 'vitest';
import { linkedItem } from '../../../src/ui/bench/linked-item';

test('linkedItem names what a link can open at', () => {
  expect(linkedItem({ kind: 'panel', index: 0, name: 'C1 R1' })).toEqual({ kind: 'panel', name: 'C1 R1' });
  expect(linkedItem({ kind: 'run', index: 0, name: '1A-01' })).toEqual({ kind: 'port', name: '1A-01' });
  expect(linkedItem({ kind: 'circuit', index: 0, name: 'D1-1' })).toEqual({ kind: 'circuit', name: 'D1-1' });
  expect(linkedItem({ kind: 'zone', index: 0, name: 'processor 1' })).toBeNull();
  expect(linkedItem(null)).toBeNull();
});
