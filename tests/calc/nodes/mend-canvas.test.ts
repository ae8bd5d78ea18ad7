import { expect, test } from 'vitest';
import { mendCanvas } from '../../../src/calc/nodes/mend-canvas';
import type { ZoneWidth } from '../../../src/calc/zones/zone-result';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainResults, zonesOf } from './plain-nodes';

const wall = plainSurface({ columns: 12, bands: [{ type: plainType(100), rows: 8 }] });
/** Zones of 3 columns, 300 x 800 each. */
const stage = { tables: [wall], zones: zonesOf(wall, 3) };
const mend = (given: Partial<Parameters<typeof plainResults>[0]>, pixels: number) => {
  const { inputs, results } = plainResults({ ...stage, ...given });
  return mendCanvas(inputs, wall.surfaceId, results.nodes, pixels);
};
const own = (zonesANode: number, canvas: { width: number; height: number } | null = null) => ({
  bySurface: [{ surfaceId: wall.surfaceId, zonesANode, linkId: null, canvas }],
});

test('mendCanvas takes back a canvas that is stated larger than the zones need', () => {
  const fix = mend({ feed: own(1, { width: 900, height: 900 }) }, 240_000);
  expect(fix).toMatchObject({ label: 'As large as its zones need', otherwise: null });
  expect(fix!.command.args).toMatchObject({ fields: [{ path: ['feed', 'bySurface', 0, 'canvas'], value: null }] });
});

test('mendCanvas leaves as many zones on a node as fit', () => {
  // All four: 1200 x 800. Two: 600 x 800 are 480,000.
  expect(mend({ feed: own(4) }, 480_000)?.label).toBe('At most 2 zones on a node');
  expect(mend({ feed: own(4) }, 479_999)?.label).toBe('A node for each zone');
});

test('mendCanvas makes zones narrower where one alone is too large', () => {
  const width = (columns: number) =>
    ({ surfaceId: wall.surfaceId, columns, canvasWidth: columns * 100, canvasHeight: 800 }) as ZoneWidth;
  const cuts = [{ surfaceId: wall.surfaceId, widths: [1, 2, 3].map(width) }] as unknown as NonNullable<
    Parameters<typeof plainResults>[0]['cuts']
  >;
  const fix = mend({ cuts }, 160_000);
  expect(fix?.label).toBe('Zones of at most 2 columns');
  expect(fix!.command.args).toMatchObject({
    fields: [
      {
        path: ['signal', 'bySurface'],
        value: [{ surfaceId: wall.surfaceId, processorId: 'proc', zoneColumnsMost: 2 }],
      },
    ],
  });
  // Not even one column fits.
  expect(mend({ cuts }, 79_999)).toBeNull();
});
