import { expect, test } from 'vitest';
import { wireZones } from '../../../src/calc/runs/wire-zones';
import { zoneHolds } from '../../../src/calc/runs/zone-holds';
import { plainSignal } from '../ports/plain-items';
import { plainSurface, plainType } from '../zones/plain-surface';
import { plainRuns } from './plain-runs';

test('zoneHolds puts every panel in exactly one zone', () => {
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 2, returns: null, zonesUp: 2 };
  const wall = plainSurface({ columns: 5, bands: [{ type: plainType(216), rows: 3 }] });
  const zones = wireZones(plainRuns({ wall, signal: plainSignal({ bySurface: [own] }) }));
  expect(zones).toHaveLength(6);
  for (let panel = 0; panel < wall.count; panel++) {
    const holding = zones.filter((zone) => zoneHolds(zone, panel));
    expect(holding).toHaveLength(1);
    expect(holding[0]!.panels).toContain(panel);
  }
});
