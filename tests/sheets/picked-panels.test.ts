import { describe, expect, it } from 'vitest';
import { pickedPanels } from '../../src/sheets/picked-panels';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const parts = stageFixture({
  columns: 4,
  rows: 2,
  jointDeg: 0,
  zoneColumns: 2,
  splitAboveRow: 2,
  ceilingDiameterMm: 1000,
});

describe('pickedPanels', () => {
  it('gives one panel, or the panels of a chain in their order', () => {
    expect(pickedPanels(parts, { kind: 'panel', index: 3 })).toEqual([3]);
    // Folded: down column 1, up column 2.
    expect(pickedPanels(parts, { kind: 'run', index: 0 })).toEqual([1, 0, 2, 3]);
    expect(pickedPanels(parts, { kind: 'circuit', index: 1 })).toEqual([2, 3]);
  });
  it('gives the panels of a zone and of a column, through all surfaces', () => {
    expect(pickedPanels(parts, { kind: 'zone', index: 1 })).toEqual([4, 5, 6, 7]);
    expect(pickedPanels(parts, { kind: 'column', surfaceId: 'ceiling-b', column: 2 })).toEqual([10, 11]);
  });
  it('gives none for what is there no more', () => {
    expect(pickedPanels(parts, null)).toEqual([]);
    for (const kind of ['panel', 'run', 'circuit', 'zone'] as const) {
      expect(pickedPanels(parts, { kind, index: 99 })).toEqual([]);
      expect(pickedPanels(parts, { kind, index: -1 })).toEqual([]);
    }
    expect(pickedPanels(parts, { kind: 'column', surfaceId: 'nowhere', column: 1 })).toEqual([]);
    expect(pickedPanels(parts, { kind: 'column', surfaceId: 'wall-a', column: 9 })).toEqual([]);
  });
});
