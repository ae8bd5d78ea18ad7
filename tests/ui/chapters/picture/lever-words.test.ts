import { expect, test } from 'vitest';
import { changeWords, costWords } from '../../../../src/ui/chapters/picture/lever-words';

const format = (value: number | null, unit: string) => `${value} ${unit}`;
const step = {
  from: { value: 60, unit: 'fps' },
  to: { value: 48, unit: 'fps' },
  command: { name: 'set-fields', args: { fields: [] } },
  buys: 0,
} as const;

test('changeWords name a choice, and a size from what is to what must be', () => {
  expect(changeWords(step, format)).toBe('60 fps to 48 fps');
  expect(changeWords({ ...step, choice: 'Fewest ports first' }, format)).toBe('Fewest ports first');
});

test('costWords are money with its sign, in plain words where there is none', () => {
  expect(costWords({ cost: 1200, panelsLost: 0 }, format)).toBe('+1200 money');
  expect(costWords({ cost: -1200, panelsLost: 0 }, format)).toBe('−1200 money');
  expect(costWords({ cost: 0, panelsLost: 0 }, format)).toBe('no cost');
  expect(costWords({ cost: null, panelsLost: 0 }, format)).toBe('price not stated');
});

test('costWords say how many panels the stage loses', () => {
  expect(costWords({ cost: 0, panelsLost: 1 }, format)).toBe('no cost, 1 count panel fewer');
  expect(costWords({ cost: -5, panelsLost: 28 }, format)).toBe('−5 money, 28 count panels fewer');
});
