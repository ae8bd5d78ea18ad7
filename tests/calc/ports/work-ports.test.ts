import { expect, test } from 'vitest';
import { computePicture } from '../../../src/calc/picture/compute-picture';
import { computePorts, type PortsInputs } from '../../../src/calc/ports/compute-ports';
import { workPorts } from '../../../src/calc/ports/work-ports';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';
import { expectStepsHold } from './expect-steps-hold';
import { mode, plainBreakout, plainPanel, plainProcessor, plainSignal } from './plain-items';

function inputs(port: Parameters<typeof plainProcessor>[0], rest: Partial<PortsInputs> = {}): PortsInputs {
  const surfaces = setOf(plainSurface({ columns: 4, bands: [{ type: plainType(216), rows: 3 }] }));
  const picture = { base: mode(48_000, 10, 1, 1001), bySurface: [], alsoServe: [] };
  return {
    signal: plainSignal({ freeShare: 0.29 }),
    processors: [plainProcessor(port)],
    breakouts: [plainBreakout()],
    panels: [plainPanel(216, { chainPanels: 8 })],
    surfaces,
    picture: computePicture({ picture, surfaces }),
    ...rest,
  };
}

test('workPorts prints sheet, line, the smaller, what stays usable and the panels', () => {
  const given = inputs({ lowestRateHz: 30 });
  const steps = workPorts(given, computePorts(given));
  expectStepsHold(steps);
  expect(steps.map(({ symbol }) => symbol)).toEqual(['sheet', 'line', 'capacity', 'usable', 'panel', 'panels']);
  expect(steps.at(-1)).toMatchObject({ value: 8, expression: 'min(floor(usable / panel), chain)' });
});

test('workPorts leaves the sheet out where none states a figure, and holds at an exact floor', () => {
  const given = inputs({ sheetPixels: null }, { panels: [plainPanel(216)], signal: plainSignal({ panelsMost: 3 }) });
  const steps = workPorts(given, computePorts(given));
  expectStepsHold(steps);
  expect(steps.map(({ symbol }) => symbol)).toEqual(['line', 'capacity', 'usable', 'panel', 'panels']);
  expect(steps.at(-1)?.value).toBe(3);
});

test('workPorts names the source of the framing', () => {
  const given = inputs({});
  const line = workPorts(given, computePorts(given)).find(({ symbol }) => symbol === 'line');
  expect(line?.source).toMatchObject({ kind: 'source' });
  expect(line?.source.text).toContain('IEEE 802.3');
});

test('workPorts has nothing to say without a processor', () => {
  const given = inputs({}, { signal: plainSignal({ processorId: null }) });
  expect(workPorts(given, computePorts(given))).toEqual([]);
});
