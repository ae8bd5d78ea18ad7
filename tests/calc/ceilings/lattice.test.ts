import { describe, expect, it } from 'vitest';
import { latticeOf, toHalves } from '../../../src/calc/ceilings/lattice';
import { placedPanelType } from '../../../src/calc/surfaces/placed-panel-type';
import { plainPanel } from '../panels/plain-panel';
import { plainCeiling } from './plain-ceiling';

describe('toHalves', () => {
  it('counts half micrometres', () => {
    expect(toHalves(0.001)).toBe(2);
    expect(toHalves(-609.6)).toBe(-1_219_200);
  });
});

describe('latticeOf', () => {
  const place = plainCeiling().place;

  it('puts a corner or a centre at the origin, each axis for itself', () => {
    const type = placedPanelType(plainPanel('a', { size: { widthMm: 500, heightMm: 1000 } }), 0);
    expect(latticeOf({ ...place, centredAcross: false, centredAlong: true }, type)).toEqual({
      startU: 0,
      startV: -1_000_000,
      stepU: 1_000_000,
      stepV: 2_000_000,
    });
    expect(latticeOf({ ...place, centredAcross: true, centredAlong: false }, type)).toMatchObject({
      startU: -500_000,
      startV: 0,
    });
  });

  it('has whole numbers where a panel is an odd number of micrometres wide', () => {
    const type = placedPanelType(plainPanel('a', { size: { widthMm: 0.001 } }), 0);
    expect(latticeOf({ ...place, centredAcross: true }, type)).toMatchObject({ startU: -1, stepU: 2 });
  });
});
