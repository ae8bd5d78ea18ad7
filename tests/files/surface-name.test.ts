import { expect, test } from 'vitest';
import { surfaceName } from '../../src/files/surface-name';

test('surfaceName has letter and name, or the letter alone', () => {
  expect(surfaceName({ letter: 'A', name: 'Horseshoe' })).toBe('A Horseshoe');
  expect(surfaceName({ letter: 'B', name: '' })).toBe('B');
});
