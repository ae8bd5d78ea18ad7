import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { checkPower } from '../../../src/calc/power/check-power';
import { computePower } from '../../../src/calc/power/compute-power';
import { workLimits } from '../../../src/calc/power/work-limits';
import { checkOf, powerInputs, servicePoint } from '../../arbitraries/power-inputs';
import { powerPanel, surfaceSet } from '../../arbitraries/power-surfaces';

const inputs = powerInputs(
  { panels: [powerPanel('p', { leakageMa: 1 })] },
  { servicePoints: [servicePoint('a', 100), servicePoint('b', 63)] },
);
const results = computePower(inputs);
const steps = workLimits(inputs, results);
const step = (figure: string) => steps.find((each) => each.figure.startsWith(figure))!;

test('workLimits adds up what the service points carry: 0.8 of 163 A, 130.4 A a leg', () => {
  expect(step('what the service')).toMatchObject({ numbers: { share: 0.8, a1: 100, a2: 63 }, unit: 'A' });
  expect(step('what the service').value).toBeCloseTo(130.4, 9);
  expect(step('what the service').source.text).toContain('NEC');
});

test('workLimits names no code for a share that is not its own', () => {
  const own = powerInputs({}, { servicePoints: [servicePoint('a', 100)], circuit: { ratedA: 16, usableShare: 0.7 } });
  expect(workLimits(own, computePower(own))[0]!.source.text).not.toContain('NEC');
});

test('workLimits lets 9 panels of 1 mA behind a device of 30 mA (IEC 60364-5-53, from memory)', () => {
  expect(step('panels behind')).toMatchObject({ value: 9, source: { fromMemory: true } });
});

test('workLimits prints the limits that the checks state, and a maths library comes to them as well', () => {
  const checks = checkPower(inputs, results);
  expect(step('what the service').value).toBe(checkOf(checks, 'power.service')!.limit);
  expect(step('third harmonics').value).toBe(checkOf(checks, 'power.triplen-neutral')!.measured);
  expect(step('panels behind').value).toBe(checkOf(checks, 'power.leakage')!.limit);
  for (const each of steps) {
    expect(evaluate(each.expression, { ...each.numbers })).toBeCloseTo(each.value, 9);
  }
});

test('workLimits leaves out what is not stated, and the bound where no panel sits on the neutral', () => {
  const bare = powerInputs({}, { connection: 'leg-to-leg' });
  expect(workLimits(bare, computePower(bare))).toEqual([]);
  const empty = powerInputs({ surfaces: surfaceSet() });
  expect(workLimits(empty, computePower(empty))).toEqual([]);
});
