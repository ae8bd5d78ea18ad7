import { expect, test } from 'vitest';
import type { Build, ExactFigures, PanelBuilds } from '../../src/calc/finder/build';
import { findReport } from '../../src/cli/find-report';
import { checkOf } from './small-stage';

const options = { lengths: 'metric', locale: 'en-GB', currency: 'EUR' } as const;
const build: Build = {
  key: 'k',
  panelId: 'p',
  panelName: 'Panel 500',
  columns: 120,
  rows: 12,
  panels: 1440,
  acrossMm: 20_012,
  openingMm: 4020,
  heightMm: 6000,
  worstMm: 12.5,
  mixed: true,
  roomMm: 1500,
  areaM2: 360,
  pixels: 50_000_000,
  massKg: 12_000,
  price: 2_000_000,
  withinStack: true,
  underHall: true,
  letsIn: true,
  missMm: 32,
  command: { name: 'set-fields', args: { fields: [] } },
};
const exact: ExactFigures = {
  processors: 8,
  ports: 120,
  worstLegA: 400.5,
  circuits: 100,
  priceTotal: 2_500_000,
  stops: [],
};
const panel = (builds: readonly Build[], refused: string | null = null): PanelBuilds => ({
  panelId: 'p',
  panelName: 'Panel 500',
  builds,
  refused,
});
const report = (of: PanelBuilds, figures: ExactFigures | null = exact) => findReport(of, figures, options, 80);

test('findReport gives the best build with its figures, and counts the others', () => {
  const text = report(panel([build, build, build]));
  expect(text).toMatch(/^Panel 500, mixed joints\n/);
  expect(text).toMatch(/Across +20\.01 m +Opening +4\.02 m\n/);
  expect(text).toMatch(/Height +6\.00 m +Columns and rows +120 x 12\n/);
  expect(text).toMatch(/Off the circle +12\.5 mm +Room in the hall +1\.50 m\n/);
  expect(text).toMatch(/Processors +8 +Ports +120\n/);
  expect(text).toContain('Other builds near the wish: 2');
});

test('findReport says what is wrong with a build before its figures', () => {
  const text = report(panel([{ ...build, mixed: false, roomMm: -200, withinStack: false }]));
  expect(text).toMatch(/^Panel 500, does not fit the hall, higher than its lock may stack\n/);
  const high = report(panel([{ ...build, mixed: false, underHall: false }]));
  expect(high).toMatch(/^Panel 500, above the clear height of the hall\n/);
  const shut = report(panel([{ ...build, mixed: false, letsIn: false }]));
  expect(shut).toMatch(/^Panel 500, no way in for what must drive in\n/);
});

test('findReport marks what nobody stated and what a flat wall has not', () => {
  const text = report(panel([{ ...build, worstMm: null, openingMm: null, roomMm: null, price: null }]));
  expect(text).toMatch(/Off the circle +- +Room in the hall +not stated\n/);
  expect(text).toMatch(/Price of panels +not stated\n/);
});

test('findReport names the checks that would stop it, and says where figures are not known', () => {
  const stops = [checkOf({ id: 'zones.processors.A' }), checkOf({ id: 'power.legs' })];
  expect(report(panel([build]), { ...exact, stops })).toContain('Stopped by: zones.processors.A, power.legs');
  expect(report(panel([build]))).toContain('No check stops it.');
  const unknown = report(panel([build]), null);
  expect(unknown).toContain('signal and power are not known');
  expect(unknown).toMatch(/Processors +- +Ports +-\n/);
});

test('findReport of a panel without a build says why', () => {
  expect(report(panel([], 'Its lock takes no joint.'), null)).toBe('Panel 500: Its lock takes no joint.\n');
});
