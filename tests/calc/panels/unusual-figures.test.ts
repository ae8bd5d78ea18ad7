import { describe, expect, it } from 'vitest';
import { unusualFigures } from '../../../src/calc/panels/unusual-figures';
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

  it('finds black out of range where full white is nought', () => {
    const dark = plainPanel('a', { power: { blackW: 0, fullWhiteW: 0 } });
    expect(unusualFigures(dark)).toContainEqual(['power', 'blackW']);
  });
});
