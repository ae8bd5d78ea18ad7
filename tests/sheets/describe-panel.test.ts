import { expect, it } from 'vitest';
import { describePanel } from '../../src/sheets/describe-panel';
import { stageFixture } from '../arbitraries/evaluation-fixture';

const parts = stageFixture({ columns: 2, rows: 2, jointDeg: 0, splitAboveRow: 2, ceilingDiameterMm: 1000 });

it('describePanel says name, port, place and circuit', () => {
  // Column 2, row 1: third on the run that comes down column 1; the second circuit.
  expect(describePanel(parts, 2)).toBe('A C2 R1, port 1A-01, 3 of 4, circuit D1-2 on L2');
});

it('describePanel says what a panel lacks', () => {
  const bare = {
    ...parts,
    runs: { ...parts.runs, runOf: new Int32Array(8).fill(-1) },
    power: { ...parts.power, circuitOf: new Int32Array(8).fill(-1) },
  };
  expect(describePanel(bare, 0)).toBe('A C1 R1, on no port, on no circuit');
  expect(describePanel(parts, 99)).toBeNull();
});
