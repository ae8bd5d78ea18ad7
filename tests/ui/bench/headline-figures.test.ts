import { expect, test } from 'vitest';
import type { Step } from '../../../src/calc/chapter';
import { headlineFigures } from '../../../src/ui/bench/headline-figures';

const step = (figure: string, value: number) => ({ figure, value, unit: 'A' }) as Step;

test('headlineFigures gives each figure once, with the value of its last step, in order', () => {
  const steps = [step('Worst leg', 1), step('Worst leg', 2), step('Neutral', 3)];
  expect(headlineFigures(steps, (value, unit) => `${value} ${unit}`)).toEqual([
    { name: 'Worst leg', value: '2 A' },
    { name: 'Neutral', value: '3 A' },
  ]);
});
