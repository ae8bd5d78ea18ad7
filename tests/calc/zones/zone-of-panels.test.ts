import { expect, it } from 'vitest';
import { zoneOfPanels, zonePanels } from '../../../src/calc/zones/zone-of-panels';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

it('zoneOfPanels gives every panel the zone whose rectangle holds it, none to a hole', () => {
  const { surfaces, zones } = stageFixture({
    columns: 5,
    rows: 2,
    jointDeg: 0,
    zoneColumns: 3,
    hole: { column: 2, row: 1, columns: 1, rows: 1 },
  });
  // Columns 1 to 3 are zone 0 with five panels left, columns 4 and 5 zone 1.
  expect([...zoneOfPanels(surfaces.surfaces[0]!, zones)]).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 1]);
  expect(zonePanels(surfaces.surfaces[0]!, zones[1]!)).toEqual([5, 6, 7, 8]);
});

it('zoneOfPanels leaves panels outside every zone at -1, and takes zones of other surfaces for none', () => {
  const { surfaces, zones } = stageFixture({ columns: 4, rows: 1, jointDeg: 0, zoneColumns: 2 });
  const table = surfaces.surfaces[0]!;
  expect([...zoneOfPanels(table, [zones[0]!])]).toEqual([0, 0, -1, -1]);
  expect([...zoneOfPanels(table, [{ ...zones[0]!, surfaceId: 'elsewhere' }])]).toEqual([-1, -1, -1, -1]);
  // A zone may reach past the surface (blank columns).
  expect([...zoneOfPanels(table, [{ ...zones[1]!, columns: 9, rows: 9 }])]).toEqual([-1, -1, 0, 0]);
});
