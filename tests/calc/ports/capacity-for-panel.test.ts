import fc from 'fast-check';
import { expect, test } from 'vitest';
import { capacityForPanel } from '../../../src/calc/ports/capacity-for-panel';
import type { Mode } from '../../../src/plan/picture';
import type { Processor } from '../../../src/plan/processor';
import { mode, plainPanel, plainProcessor, plainSignal } from './plain-items';

const capacity = (served: Mode[], port: Partial<Processor['port']> = {}, freeShare = 0.1) =>
  capacityForPanel({
    panel: plainPanel(216),
    processor: plainProcessor(port),
    signal: plainSignal({ freeShare }),
    served,
  });
const lineOnly = { sheetPixels: null };

// Common practice, no source: a column of 13 panels of 216 x 216 fits one gigabit port at 8 bit and 60 fps by line rate,
// packed, 10 % free. Worked: 10^9 x 1500 / 1538 / (60 x 24) = 677,286.4 px; x 0.9 = 609,557 px; / 46,656 = 13.065 (the trade's
// 13.07 takes the efficiency as 97.53 %).
test('capacityForPanel puts a column of 13 on a gigabit port by line rate at 8 bit and 60 fps', () => {
  const { panelsAPort, usablePixels, panelPixels, sheetPixels } = capacity([mode(60)], lineOnly);
  expect(panelsAPort).toBe(13);
  expect(usablePixels / panelPixels).toBeCloseTo(13.065, 3);
  expect(sheetPixels).toBeNull();
});

// 650,000 x 0.9 = 585,000; / 46,656 = 12.54.
test('capacityForPanel puts 12 of them on a port by a sheet of 650,000 pixels', () => {
  const found = capacity([mode(60)]);
  expect(found).toMatchObject({ panelsAPort: 12, usablePixels: 585_000, capacityPixels: 650_000, limitedBy: 'pixels' });
});

// Common practice, no source: at 10 bit a port carries 8 to 11 such panels, so the column of 13 does not fit.
test.each([
  [lineOnly, 10],
  [{}, 10],
  [{ sheetPixels: 650_000, carriageBits: { at8: 24, at10: 48, at12: 48 } }, 6],
] as const)('capacityForPanel does not put 13 on a port at 10 bit: case %#', (port, panels) => {
  expect(capacity([mode(60, 10)], port).panelsAPort).toBe(panels);
});

test('capacityForPanel at 10 bit packed stays within 8 to 11 for any free share from nothing to a quarter', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 25 }), (percent) => {
      const { panelsAPort } = capacity([mode(60, 10)], {}, percent / 100);
      expect(panelsAPort).toBeGreaterThanOrEqual(8);
      expect(panelsAPort).toBeLessThanOrEqual(11);
    }),
  );
});

test('capacityForPanel is sized for the worst mode served, not for the first', () => {
  const found = capacity([mode(24, 10), mode(60, 10), mode(48, 10)], { lowestRateHz: 24 });
  expect(found.mode).toEqual(mode(60, 10));
  // A sheet that does not grow below 60 fps leaves the least at the greatest depth instead; of equals the first counts.
  expect(capacity([mode(60, 8), mode(24, 12)]).mode).toEqual(mode(24, 12));
  expect(capacity([mode(24, 10), mode(60, 10)]).mode).toEqual(mode(24, 10));
});

test('capacityForPanel floors exactly where a column uses a port to the pixel', () => {
  // 50 panels of 216 x 216 are 2,332,800 px = 3,240,000 x (1 - 0.28), which floating point puts just below.
  const found = capacity([mode(60)], { sheetPixels: 3_240_000, lineMbps: 10_000 }, 0.28);
  expect(found.usablePixels).toBe(2_332_800);
  expect(found.panelsAPort).toBe(50);
});

test('capacityForPanel says what limits: chain or user', () => {
  const of = (chainPanels: number | null, panelsMost: number | null) =>
    capacityForPanel({
      panel: plainPanel(216, { chainPanels }),
      processor: plainProcessor(),
      signal: plainSignal({ panelsMost }),
      served: [mode(60)],
    });
  expect(of(10, null)).toMatchObject({ panelsAPort: 10, limitedBy: 'chain' });
  expect(of(10, 9)).toMatchObject({ panelsAPort: 9, limitedBy: 'user' });
  expect(of(40, 20)).toMatchObject({ panelsAPort: 12, limitedBy: 'pixels' });
});

test('capacityForPanel gives 0 where not one panel fits', () => {
  expect(capacity([mode(1000)]).panelsAPort).toBe(0);
});

test('capacityForPanel: more share free, a higher rate or depth never carries more panels, and nothing is NaN', () => {
  const fps = fc.integer({ min: 1, max: 1000 });
  const bits = fc.constantFrom(8 as const, 10 as const, 12 as const);
  const free = fc.integer({ min: 0, max: 95 }).map((percent) => percent / 100);
  fc.assert(
    fc.property(fps, fps, bits, free, free, (a, b, depth, f, g) => {
      const [slow, fast] = [Math.min(a, b), Math.max(a, b)];
      const [little, much] = [Math.min(f, g), Math.max(f, g)];
      const at = (rate: number, d: typeof depth, share: number) => capacity([mode(rate, d)], {}, share);
      expect(at(fast, depth, little).panelsAPort).toBeLessThanOrEqual(at(slow, depth, little).panelsAPort);
      expect(at(slow, depth, much).panelsAPort).toBeLessThanOrEqual(at(slow, depth, little).panelsAPort);
      expect(at(slow, 12, little).panelsAPort).toBeLessThanOrEqual(at(slow, 8, little).panelsAPort);
      for (const value of Object.values(at(fast, depth, much))) {
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      }
    }),
  );
});
