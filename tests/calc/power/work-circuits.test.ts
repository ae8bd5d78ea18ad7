import { expect, test } from 'vitest';
import { workCircuits } from '../../../src/calc/power/work-circuits';
import { powerInputs } from '../../arbitraries/power-inputs';
import { powerPanel } from '../../arbitraries/power-surfaces';

const figureOf = (inputs: Parameters<typeof workCircuits>[0], symbol: string) =>
  workCircuits(inputs).find((step) => step.symbol === symbol)?.value;

test('workCircuits ends in whole panels: 18 of 150 W on 16 A at 230 V (common practice, no source)', () => {
  expect(figureOf(powerInputs(), 'panels')).toBe(18);
  expect(figureOf(powerInputs(), 'usable')).toBe(12.8);
});

test('workCircuits shows the power chain only where the sheet states one', () => {
  const inputs = powerInputs({ panels: [powerPanel('p', { chainA: 5 })] });
  expect(workCircuits(inputs).find((step) => step.symbol === 'panels')).toMatchObject({
    expression: 'floor(min(usable, chain) / I + 1e-9)',
    value: 7, // 5 / 0.6865
  });
});

test('workCircuits counts no panels that draw nothing', () => {
  expect(figureOf(powerInputs({ panels: [powerPanel('p', { fullWhiteW: 0 })] }), 'panels')).toBeUndefined();
});

// NEC 210.20(A); elsewhere the same share is common practice, no source: a plan for 230 V does not claim the code.
test('workCircuits calls the share the plan’s own, and names NEC beside common practice only where it is that share', () => {
  const sourceOf = (usableShare: number) =>
    workCircuits(powerInputs({}, { circuit: { ratedA: 16, usableShare } })).find((s) => s.symbol === 'usable')!.source;
  expect(sourceOf(0.8)).toMatchObject({ kind: 'given' });
  expect(sourceOf(0.8).text).toMatch(/NEC.*common practice/);
  expect(sourceOf(0.7)).toEqual({ kind: 'given', text: 'rating and share as planned' });
});
