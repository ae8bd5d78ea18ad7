import { expect, test } from 'vitest';
import { branchLoads } from '../../../src/calc/power/branch-loads';
import { computePower } from '../../../src/calc/power/compute-power';
import { legScheme } from '../../../src/calc/power/leg-scheme';
import { surfaceCurrents } from '../../../src/calc/power/surface-currents';
import { powerInputs } from '../../arbitraries/power-inputs';
import { powerPanel, surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

test('branchLoads counts panels on each branch and multiplies by what one draws', () => {
  // Four columns of 2 p and 1 q, one circuit each at 2.4 A: legs L1 L2 L3 L1.
  const inputs = powerInputs(
    {
      panels: [powerPanel('p', { powerFactor: 1 }), powerPanel('q', { fullWhiteW: 80, powerFactor: 0.8 })],
      surfaces: surfaceSet(surfaceOf({ columns: 4, rows: 3, rowPanel: (r) => (r === 3 ? 'q' : 'p') })),
    },
    {
      supply: { kind: 'wye', legToNeutralV: 200, lowestShare: 1 },
      circuit: { ratedA: 2.5, usableShare: 0.96 },
      distroId: null,
    },
  );
  const { circuits, circuitOf } = computePower(inputs);
  const loads = branchLoads(inputs.surfaces, surfaceCurrents(inputs), legScheme(inputs.power), circuits, circuitOf);
  expect(circuits.map((circuit) => circuit.leg)).toEqual(['L1', 'L2', 'L3', 'L1']);
  expect(loads.map((load) => [load.panels.get('p'), load.panels.get('q')])).toEqual([
    [4, 2],
    [2, 1],
    [2, 1],
  ]);
  expect(loads[0]!.activeA).toBeCloseTo(3.8, 12); // (4 x 150 + 2 x 80) / 200
  expect(loads[0]!.reactiveA).toBeCloseTo(0.6, 12); // 2 x 80 x 0.75 / 200
});
