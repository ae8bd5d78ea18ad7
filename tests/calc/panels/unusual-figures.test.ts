import { describe, expect, it } from 'vitest';
import { unusualFigures } from '../../../src/calc/panels/unusual-figures';
import { starterCatalogue } from '../../../src/plan/catalogue/starter-catalogue';
import { plainPanel } from './plain-panel';

describe('unusualFigures', () => {
  it('finds none in panels as they are built', () => {
    // Handbook chapter 22, both sizes, least and greatest (from memory, common practice, no source).
    const white = { blackW: 30, fullWhiteW: 150, powerFactor: 0.95 };
    expect(unusualFigures(plainPanel('a', { massKg: 6.5, size: { depthMm: 70 }, power: white }))).toEqual([]);
    expect(unusualFigures(plainPanel('a', { massKg: 9.5, size: { depthMm: 100 }, power: white }))).toEqual([]);
    expect(
      unusualFigures(plainPanel('a', { massKg: 15, size: { heightMm: 1000 }, power: { ...white, fullWhiteW: 200 } })),
    ).toEqual([]);
  });

  it('names the fields that are out of range', () => {
    const odd = plainPanel('a', {
      massKg: 0.8,
      size: { depthMm: 800 },
      power: { fullWhiteW: 1500, blackW: 30, powerFactor: 0.1 },
    });
    expect(unusualFigures(odd)).toEqual([
      ['massKg'],
      ['size', 'depthMm'],
      ['power', 'fullWhiteW'],
      ['power', 'blackW'],
      ['power', 'powerFactor'],
    ]);
  });

  it('names what is typed with a digit too many or too few, and nothing that the sheet does not state', () => {
    const slips = plainPanel('a', {
      pixels: { wide: 20, high: 200 },
      lock: { stepsDeg: [-25, 0, 25], highestStackMm: 800 },
      light: { refreshHz: 384, peakNits: 12_000 },
      power: { leakageMa: 10 },
    });
    expect(unusualFigures(slips)).toEqual([
      ['pixels', 'wide'],
      ['lock', 'stepsDeg'],
      ['lock', 'highestStackMm'],
      ['light', 'refreshHz'],
      ['light', 'peakNits'],
      ['power', 'leakageMa'],
    ]);
    const silent = plainPanel('a', {
      lock: { stepsDeg: [], highestStackMm: null },
      light: { refreshHz: null, peakNits: null },
      power: { leakageMa: null },
    });
    expect(unusualFigures(silent)).toEqual([]);
  });

  it('finds nothing unusual in the starter catalogue', () => {
    expect(starterCatalogue.panels.flatMap(unusualFigures)).toEqual([]);
  });

  it('finds black out of range where full white is nought', () => {
    const dark = plainPanel('a', { power: { blackW: 0, fullWhiteW: 0 } });
    expect(unusualFigures(dark)).toContainEqual(['power', 'blackW']);
  });
});
