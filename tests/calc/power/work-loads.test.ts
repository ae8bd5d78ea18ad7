import { expect, test } from 'vitest';
import { computePower } from '../../../src/calc/power/compute-power';
import { workLoads } from '../../../src/calc/power/work-loads';
import { powerInputs } from '../../arbitraries/power-inputs';

test('workLoads adds panels by type and signal equipment: 360 x 150 W and 360 x (30 + 0.3 x 120) W, 500 W each', () => {
  const inputs = powerInputs({ signalLoadW: 500 });
  const [white, typical, black] = workLoads(inputs, computePower(inputs));
  expect(white).toMatchObject({ value: 54_500, numbers: { n1: 360, white1: 150, signal: 500 } });
  expect(typical!.value).toBeCloseTo(24_260, 9);
  expect(black).toMatchObject({ figure: 'power at black', value: 11_300, numbers: { n1: 360, black1: 30 } });
});
