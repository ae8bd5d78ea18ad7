import { expect, test } from 'vitest';
import { computePower } from '../../../src/calc/power/compute-power';
import { workLegs } from '../../../src/calc/power/work-legs';
import type { Power } from '../../../src/plan/power';
import { powerInputs } from '../../arbitraries/power-inputs';
import { surfaceOf, surfaceSet } from '../../arbitraries/power-surfaces';

const surfaces = surfaceSet(surfaceOf({ columns: 37, rows: 10 }));
const work = (power: Partial<Power>) => {
  const inputs = powerInputs({ surfaces, signalLoadW: 900 }, power);
  return workLegs(inputs, computePower(inputs));
};

test('workLegs names the worst leg: 13 circuits of 10 panels on L1, 12 on the others', () => {
  const steps = work({});
  expect(steps.find((step) => step.symbol === 'I')).toMatchObject({ figure: 'worst leg, L1', unit: 'A' });
  expect(steps[0]).toMatchObject({ symbol: 'p1', numbers: { n1: 130, W1: 150, V: 230 } });
});

test('workLegs shows the signal equipment only where it is on the same service', () => {
  const symbols = (includesSignal: boolean) => work({ includesSignal }).map((step) => step.symbol);
  expect(symbols(true)).toContain('ps');
  expect(symbols(false)).not.toContain('ps');
});

test('workLegs takes two pairs to a leg between legs, and says why the neutral carries nothing', () => {
  const steps = work({ connection: 'leg-to-leg' });
  const worst = ['p1', 'q1', 'p2', 'q2', 'I'];
  expect(steps.map((step) => step.symbol)).toEqual([...worst, ...worst, 'N']);
  expect(steps.at(-1)).toMatchObject({ value: 0, source: { text: 'no panel between leg and neutral' } });
});

test('workLegs of a stage whose legs cannot be computed is empty', () => {
  const inputs = powerInputs({ panels: [] });
  expect(workLegs(inputs, computePower(inputs))).toEqual([]);
});
