import { expect, test } from 'vitest';
import { shareNodesFix } from '../../../src/calc/nodes/share-nodes-fix';

const other = { surfaceId: 'b', zonesANode: 4, linkId: null, canvas: null };

test('shareNodesFix gives a surface an entry of its own and leaves the others', () => {
  const { label, command } = shareNodesFix([other], 'a', 1);
  expect(label).toBe('A node for each zone');
  const own = { surfaceId: 'a', zonesANode: 1, linkId: null, canvas: null };
  expect(command.args).toMatchObject({ fields: [{ path: ['feed', 'bySurface'], value: [other, own] }] });
});

test('shareNodesFix changes the entry that there is', () => {
  const { label, command } = shareNodesFix([other], 'b', 2);
  expect(label).toBe('At most 2 zones on a node');
  expect(command.args).toMatchObject({ fields: [{ path: ['feed', 'bySurface', 0, 'zonesANode'], value: 2 }] });
});
