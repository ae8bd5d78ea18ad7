import { expect, test } from 'vitest';
import { surfaceWords } from '../../../src/calc/surfaces/surface-words';

test('surfaceWords names a surface by what it is and its letter', () => {
  expect(surfaceWords({ kind: 'wall', letter: 'A' })).toBe('wall A');
  expect(surfaceWords({ kind: 'ceiling', letter: 'B' })).toBe('ceiling B');
});
