import { expect, test } from 'vitest';
import { computePicture } from '../../../src/calc/picture/compute-picture';
import { computePorts, type PortsInputs } from '../../../src/calc/ports/compute-ports';
import type { Mode } from '../../../src/plan/picture';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { mode, plainBreakout, plainPanel, plainProcessor, plainSignal } from './plain-items';

const wall = plainSurface({ letter: 'A', columns: 4, bands: [{ type: plainType(216), rows: 3 }] });
const mixed = plainSurface({
  letter: 'B',
  columns: 4,
  bands: [
    { type: plainType(216), rows: 2 },
    { type: plainType(108), rows: 2 },
  ],
});

function ports(inputs: Partial<PortsInputs> = {}, base: Mode = mode(60)) {
  const surfaces = inputs.surfaces ?? setOf(wall, mixed);
  return computePorts({
    signal: plainSignal(),
    processors: [plainProcessor()],
    breakouts: [plainBreakout()],
    panels: [plainPanel(216), plainPanel(108, { chainPanels: 30 })],
    surfaces,
    picture: computePicture({ picture: { base, bySurface: [], alsoServe: [] }, surfaces }),
    ...inputs,
  }).surfaces;
}

test('computePorts gives each surface its processor, its ports and its capacity by type', () => {
  const [a, b] = ports();
  expect(a).toMatchObject({ portsAProcessor: 20, portsABreakout: 10, usablePixels: 585_000, panelsMost: 65_535 });
  expect(b?.byType.map(({ panelId, panelsAPort }) => [panelId, panelsAPort])).toEqual([
    ['p216', 12],
    ['p108', 30],
  ]);
});

test('computePorts limits a run of mixed panels by the least chain and the least capacity of its types', () => {
  const panels = [
    plainPanel(216, { drivenBy: [{ processorId: 'proc', portPixels: 400_000 }] }),
    plainPanel(108, { chainPanels: 30 }),
  ];
  const [, b] = ports({ panels });
  expect(b).toMatchObject({ panelsMost: 30, capacityPixels: 400_000, usablePixels: 360_000 });
});

test('computePorts lets a surface choose its own processor and the user limit every run', () => {
  const small = plainProcessor({ sheetPixels: 200_000 }, { id: 'small', outlets: { kind: 'direct', ports: 4 } });
  const bySurface = [
    { surfaceId: 'b', processorId: 'small', nodeId: null, zoneColumnsMost: null, returns: null, zonesUp: null },
  ];
  const [a, b] = ports({
    processors: [plainProcessor(), small],
    signal: plainSignal({ bySurface, panelsMost: 7 }),
  });
  expect(a?.processor?.id).toBe('proc');
  expect(a?.panelsMost).toBe(7);
  expect(b).toMatchObject({ portsAProcessor: 4, usablePixels: 180_000 });
});

// 8,900,000 x 24/30 = 7,120,000 at 10 bit; half of it at 120 fps.
test('computePorts scales what a processor drives like a port', () => {
  expect(ports({}, mode(60, 10))[0]?.processorPixels).toBe(7_120_000);
  expect(ports({}, mode(120, 10))[0]?.processorPixels).toBe(3_560_000);
  expect(ports({}, mode(24, 8))[0]?.processorPixels).toBe(8_900_000);
});

test('computePorts without a processor gives nothing to wire with', () => {
  const [a] = ports({ signal: plainSignal({ processorId: null }) });
  expect(a).toMatchObject({ processor: null, portsAProcessor: 0, usablePixels: 0, byType: [] });
  expect(ports({ signal: plainSignal({ processorId: 'gone' }) })[0]?.processor).toBeNull();
});

test('computePorts of a surface without panels has capacity 0, not infinity', () => {
  const empty = plainSurface({ columns: 2, bands: [{ type: plainType(216), rows: 2 }], isHole: () => true });
  const [none] = ports({ surfaces: setOf({ ...empty, types: [] }) });
  expect(none).toMatchObject({ usablePixels: 0, capacityPixels: 0, byType: [] });
});
