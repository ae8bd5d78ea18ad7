import { expect, test } from 'vitest';
import { computePorts } from '../../../src/calc/ports/compute-ports';
import { runLimits } from '../../../src/calc/runs/run-limits';
import { plainSignal } from '../ports/plain-items';
import { plainPorts } from '../ports/plain-ports';

const ports = computePorts(plainPorts()).surfaces[0]!;

test('runLimits takes pixels, chain and counting from the ports, reach from the givens', () => {
  expect(runLimits('wall', { ...ports, panelsMost: 9, counting: 'rectangle' }, plainSignal())).toEqual({
    usablePixels: 585_000,
    panelsMost: 9,
    counting: 'rectangle',
    reachMm: 2100,
  });
});

test('runLimits has no reach on a ceiling', () => {
  expect(runLimits('ceiling', ports, plainSignal()).reachMm).toBe(Number.POSITIVE_INFINITY);
});
