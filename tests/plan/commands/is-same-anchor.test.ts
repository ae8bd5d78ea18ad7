import { expect, test } from 'vitest';
import { isSameAnchor } from '../../../src/plan/commands/is-same-anchor';

test('isSameAnchor tells anchors apart by surface, segment, column and row', () => {
  const at = { surfaceId: 'wall', segmentId: 'left', column: 2, row: 1 };
  expect(isSameAnchor(at, { ...at })).toBe(true);
  for (const other of [{ surfaceId: 'w' }, { segmentId: null }, { column: 1 }, { row: 2 }]) {
    expect(isSameAnchor(at, { ...at, ...other })).toBe(false);
  }
});
