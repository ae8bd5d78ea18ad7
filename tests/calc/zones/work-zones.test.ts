import { expect, test } from 'vitest';
import { computeZones } from '../../../src/calc/zones/compute-zones';
import { workZones } from '../../../src/calc/zones/work-zones';
import { expectStepsHold } from '../ports/expect-steps-hold';
import { mode, plainSignal } from '../ports/plain-items';
import { plainSurface, plainType } from './plain-surface';
import { plainZones } from './plain-zones';

test('workZones prints processors, the share used and the payload of the input', () => {
  const wall = plainSurface({ columns: 136, bands: [{ type: plainType(216), rows: 13 }] });
  const given = plainZones({ wall, base: mode(60_000, 10, 1, 1001) });
  const steps = workZones(given, computeZones(given));
  expectStepsHold(steps);
  expect(steps[1]?.numbers).toEqual({ across: 14, up: 1 });
  expect(steps.map(({ symbol }) => symbol)).toEqual(['across', 'processors', 'used', 'lines', 'clock', 'payload']);
});

test('workZones takes zones without a panel off', () => {
  const isHole = (column: number, row: number) => column > 2 && column < 5 && row < 3;
  const wall = plainSurface({ columns: 6, bands: [{ type: plainType(216), rows: 4 }], isHole });
  const own = { surfaceId: 'a', processorId: 'proc', nodeId: null, zoneColumnsMost: 2, returns: null, zonesUp: 2 };
  const given = plainZones({ wall, signal: plainSignal({ bySurface: [own] }) });
  const steps = workZones(given, computeZones(given));
  expectStepsHold(steps);
  expect(steps[1]).toMatchObject({ expression: 'across * up - empty', value: 5 });
});

test('workZones has nothing to print where there is no zone', () => {
  const given = plainZones({ signal: plainSignal({ processorId: null }) });
  expect(workZones(given, computeZones(given))).toEqual([]);
});
