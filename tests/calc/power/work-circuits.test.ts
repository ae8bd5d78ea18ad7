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
