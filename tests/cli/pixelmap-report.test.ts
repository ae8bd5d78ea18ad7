import { expect, test } from 'vitest';
import type { OutputsInputs } from '../../src/calc/outputs/outputs-inputs';
import { pixelmapReport } from '../../src/cli/pixelmap-report';
import { cornerNodes, cornerRuns, cornerSurfaces, cornerZones } from '../calc/outputs/corner-stage';

const inputs = { surfaces: cornerSurfaces, zones: cornerZones, runs: cornerRuns, fed: cornerNodes } as OutputsInputs;

test('pixelmapReport has a line a node and counts the panels that none feeds', () => {
  const lines = pixelmapReport({ name: 'Corner', revision: 'B' }, inputs, 80).split('\n');
  expect(lines[0]).toBe('Pixel map: Corner, revision B');
  expect(lines.map((line) => line.split(/\s{2,}/))).toContainEqual(['N2', 'A', '100 x 300', '100, 0', '2', '2']);
  expect(lines).toContain('Panels without a node: 1');
});
