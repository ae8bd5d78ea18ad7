import { expect, test } from 'vitest';
import { headlineFigures } from '../../src/sheets/headline-figures';
import { headline } from '../cli/small-stage';

const metric = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;
const figure = (
  name: string,
  figures: Partial<typeof headline> = {},
  display: Parameters<typeof headlineFigures>[1] = metric,
) => {
  const { stage, supply } = headlineFigures({ ...headline, ...figures }, display);
  return [...stage, ...supply].find((each) => each.name === name)?.value;
};

test('headlineFigures writes each figure with its unit, in feet where lengths are in feet', () => {
  expect(figure('Wall height')).toBe('500 mm');
  // 500 mm / 25.4 = 19.685 in: 1 ft and 7.685 in, nearest eighth 5/8.
  expect(figure('Wall height', {}, { ...metric, lengths: 'feet' })).toBe(`1' 7 5/8"`);
  expect(figure('Full white')).toBe('300 W');
});

test('headlineFigures puts a dash where a figure cannot be computed', () => {
  expect(figure('Opening')).toBe('-');
  expect(figure('Panels a port', { panelsPerPortMin: null, panelsPerPortMax: null })).toBe('-');
});

test('headlineFigures says a range of panels a port, or one number where all are alike', () => {
  expect(figure('Panels a port', { panelsPerPortMin: 8, panelsPerPortMax: 10 })).toBe('8 to 10');
  expect(figure('Panels a port')).toBe('2');
  expect(figure('Ports used')).toBe('1 (least 1)');
});
