import { describe, expect, it } from 'vitest';
import { computePanels } from '../../../src/calc/panels/compute-panels';
import { plainPanel } from './plain-panel';

describe('computePanels', () => {
  it('derives pitch and figures by area from the sheet', () => {
    // 500 / 320 = 1.5625; 0.5 x 1 = 0.5 m2; 180 W / 0.5; 12 kg / 0.5; 320 x 640 / 0.5.
    const sheet = plainPanel('a', {
      name: 'Tall',
      massKg: 12,
      size: { heightMm: 1000 },
      pixels: { wide: 320, high: 640 },
      power: { fullWhiteW: 180 },
    });
    expect(computePanels([sheet]).panels).toEqual([
      {
        panelId: 'a',
        name: 'Tall',
        pitchMm: 1.5625,
        pitchAcrossMm: 1.5625,
        pitchUpMm: 1.5625,
        areaM2: 0.5,
        pixels: 204_800,
        wattsPerM2: 360,
        kgPerM2: 24,
        pixelsPerM2: 409_600,
      },
    ]);
  });

  it('gives the pitch that the trade calls by its two decimals', () => {
    // Pixels along 500 mm and the pitch they are sold by: handbook chapter 22 (from memory, common practice, no source).
    const trade = [
      [320, 1.56],
      [256, 1.95],
      [216, 2.31],
      [192, 2.6],
      [176, 2.84],
      [128, 3.91],
      [104, 4.81],
      [84, 5.95],
    ] as const;
    for (const [wide, pitch] of trade) {
      const figures = computePanels([plainPanel('a', { pixels: { wide, high: wide } })]).panels[0]!;
      expect(Math.round(figures.pitchMm * 100) / 100).toBe(pitch);
    }
  });

  it('keeps both pitches where a sheet contradicts itself', () => {
    const odd = computePanels([plainPanel('a', { pixels: { wide: 200, high: 250 } })]).panels[0]!;
    expect(odd.pitchAcrossMm).toBe(2.5);
    expect(odd.pitchUpMm).toBe(2);
    expect(odd.pitchMm).toBe(2.5);
  });
});
