import { expect, test } from 'vitest';
import type { Headline } from '../../../../src/calc/evaluation';
import { summaryFigures } from '../../../../src/ui/chapters/summary/summary-figures';

const headline: Headline = {
  panels: 1768,
  columns: 136,
  rows: 13,
  insideDiameterMm: 22_910,
  openingMm: null,
  wallHeightMm: 6500,
  pixels: 82_487_808,
  processors: 11,
  breakouts: 22,
  portsUsed: 220,
  portsLeast: 205,
  panelsPerPortMin: 6,
  panelsPerPortMax: 12,
  fullestPortShare: 0.86,
  circuits: 136,
  worstLegA: 900,
  neutralA: 4,
  powerMaxW: 300_000,
  heatTons: 85,
  massKg: 14_000,
  priceTotal: 2_000_000,
};
const mode = { rate: { frames: 24000, seconds: 1001 }, depthBits: 10, pictures: 2 } as const;

const figure = (of: Headline, name: string) =>
  summaryFigures(of, mode, (value, unit, absent = 'not known') => (value === null ? absent : `${value} ${unit}`)).find(
    (one) => one.name === name,
  )!.value;

test('summaryFigures say every headline figure', () => {
  expect(figure(headline, 'Panels')).toBe('1768 count');
  expect(figure(headline, 'Columns and rows')).toBe('136 × 13');
  expect(figure(headline, 'Panels a port')).toBe('6 to 12');
  expect(figure({ ...headline, panelsPerPortMax: 6 }, 'Panels a port')).toBe('6');
  expect(figure(headline, 'Rate and depth')).toBe('23.976 fps, 10 bit, 2 pictures a frame');
});

test('a figure that cannot be computed is said, never shown as a number', () => {
  expect(figure(headline, 'Opening')).toBe('not a ring');
  expect(figure({ ...headline, worstLegA: null }, 'Worst leg')).toBe('not known');
  expect(figure({ ...headline, panelsPerPortMin: null }, 'Panels a port')).toBe('not known');
});
