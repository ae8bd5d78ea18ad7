import { expect, test } from 'vitest';
import reference from '../../../fixtures/reference/link-fixed-modes.json';
import { modeClock } from '../../../src/calc/links/mode-clock';
import { fixedModes } from '../../../src/calc/tables/fixed-modes';

const named = (id: string) => fixedModes.find((mode) => mode.id === id)!;

// Source: CTA-861 and VESA DMT modes printed by an outside program (fixtures/reference/link-fixed-modes.json).
test.each(reference.modes)('modeClock and totals of $id', (row) => {
  const [kind, number] = row.id.split(/ (?:VIC )?/).slice(-2);
  const mode = named(kind === 'DMT' ? `dmt-${Number(number)}` : `cta-${number}`) ?? null;
  if (mode === null) {
    // A second name of a raster: the same totals stand under another number.
    expect(fixedModes.some((other) => other.totalWidth === row.hTotal && other.totalHeight === row.vTotal)).toBe(true);
    return;
  }
  expect([mode.width, mode.height, mode.totalWidth, mode.totalHeight]).toEqual([
    row.width,
    row.height,
    row.hTotal,
    row.vTotal,
  ]);
  expect(modeClock(mode, mode)).toBe(Math.round(row.pixelClockMHz * 1000) * 1000);
});

test('modeClock of a CTA-861 mode at x1000/1001 is its clock divided by 1.001', () => {
  expect(modeClock(named('cta-16'), { frames: 60_000, seconds: 1001 })! / 1e6).toBeCloseTo(148.5 / 1.001, 9);
  expect(modeClock(named('cta-93'), { frames: 24_000, seconds: 1001 })! / 1e6).toBeCloseTo(297 / 1.001, 9);
});

test('modeClock is null at a rate that the mode does not run at', () => {
  expect(modeClock(named('cta-16'), { frames: 50, seconds: 1 })).toBeNull();
  // DMT modes have no x1000/1001 rate, but for the one that is made for it.
  expect(modeClock(named('dmt-68'), { frames: 60_000, seconds: 1001 })).toBeNull();
  expect(modeClock(named('dmt-88'), { frames: 60_000, seconds: 1001 })).toBe(556_188_000);
});
