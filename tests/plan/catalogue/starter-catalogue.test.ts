import { expect, test } from 'vitest';
import { catalogue } from '../../../src/plan/catalogue';
import { starterCatalogue } from '../../../src/plan/catalogue/starter-catalogue';
import { findItem } from '../../../src/plan/find-item';

const { panels, processors, breakouts, cables } = starterCatalogue;

test('the starter catalogue is valid and says of every item that it is invented', () => {
  expect(catalogue.safeParse(starterCatalogue).error?.issues).toBeUndefined();
  for (const items of Object.values(starterCatalogue))
    for (const item of items) expect(item.name).toContain('(invented)');
});

test('the starter catalogue has panels of at least five sizes and pitches, one of 500 x 1000 mm', () => {
  expect(
    new Set(panels.map(({ size, pixels }) => `${size.widthMm} ${size.heightMm} ${pixels.wide}`)).size,
  ).toBeGreaterThan(4);
  expect(panels.some(({ size }) => size.widthMm === 500 && size.heightMm === 1000)).toBe(true);
});

test('the starter catalogue has a processor with breakouts, one with ports of its own, and a small one', () => {
  expect(processors.map(({ outlets }) => outlets.kind)).toEqual(['breakouts', 'direct', 'direct']);
  expect(Math.min(...processors.map(({ canvas }) => canvas.pixels))).toBeLessThan(3e6);
  expect(breakouts.length).toBeGreaterThan(1);
});

test('the starter catalogue refers to nothing that it does not have, and counts every kind of cable', () => {
  for (const { data } of panels) {
    for (const { processorId } of data.drivenBy)
      expect(findItem(starterCatalogue, processorId)?.list).toBe('processors');
  }
  for (const { outlets } of processors) {
    if (outlets.kind === 'breakouts') expect(findItem(starterCatalogue, outlets.breakoutId)?.list).toBe('breakouts');
  }
  expect(cables.map(({ kind }) => kind).sort()).toEqual([
    'circuit',
    'data-jumper',
    'home-run',
    'power-jumper',
    'trunk',
    'video',
  ]);
});

// Usual ranges by the square metre of 500 x 500 mm panels: 6.5 to 9.5 kg, 100 to 190 W, a third of it typical, 15 to 25 % at
// black, 70 to 100 mm deep (from memory, common practice, no source).
test('the starter catalogue keeps to usual ranges, and its pixels are square', () => {
  for (const { size, pixels, massKg, power } of panels) {
    const quarterMetres = (size.widthMm * size.heightMm) / 250_000;
    expect(massKg / quarterMetres).toBeGreaterThan(5.5);
    expect(massKg / quarterMetres).toBeLessThan(9.5);
    expect(power.fullWhiteW / quarterMetres).toBeGreaterThan(100);
    expect(power.fullWhiteW / quarterMetres).toBeLessThan(190);
    expect(power.typicalW / power.fullWhiteW).toBeCloseTo(1 / 3, 1);
    expect(power.blackW / power.fullWhiteW).toBeGreaterThan(0.15);
    expect(power.blackW / power.fullWhiteW).toBeLessThan(0.25);
    expect(size.widthMm / pixels.wide).toBeCloseTo(size.heightMm / pixels.high, 9);
  }
});
