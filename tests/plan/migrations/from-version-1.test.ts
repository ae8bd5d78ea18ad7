import { expect, test } from 'vitest';
import { fromVersion1 } from '../../../src/plan/migrations/from-version-1';

const { migrate } = fromVersion1;

test('a plan without returns and shared canvases stays one: a node a zone, no spare, no step of delay', () => {
  expect(
    migrate({ signal: { bySurface: [{ surfaceId: 'a' }] }, catalogue: { nodes: [{ id: 'n' }], panels: [] } }),
  ).toEqual({
    signal: { returns: 'none', bySurface: [{ surfaceId: 'a', returns: null }] },
    catalogue: { nodes: [{ id: 'n', outputs: 1, canvasPixels: null }], panels: [] },
    feed: expect.objectContaining({ zonesANode: 1, spareNodes: 0, bySurface: [] }),
    delay: { steps: [], mostMs: null },
    sync: expect.objectContaining({ reference: 'tri-level', trackers: 0 }),
    addresses: expect.objectContaining({ prefixBits: 24 }),
  });
});

test('what is not understood is left for the schema to name', () => {
  for (const odd of [null, 4, 'x', []])
    expect(migrate({ signal: odd, catalogue: odd })).toMatchObject({ signal: odd, catalogue: odd });
  expect(migrate({ signal: { bySurface: [null, 3] }, catalogue: { nodes: 'none' } })).toMatchObject({
    signal: { bySurface: [null, 3] },
    catalogue: { nodes: 'none' },
  });
});
