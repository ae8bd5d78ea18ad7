import { describe, expect, it } from 'vitest';
import { latticeCeiling } from '../../../src/calc/ceilings/lattice-ceiling';
import { plainPanel } from '../panels/plain-panel';
import { plainCeiling } from './plain-ceiling';

const shapes = new Map([
  ['p1', plainPanel('p1')],
  ['tall', plainPanel('tall', { size: { heightMm: 1000 }, pixels: { wide: 100, high: 200 } })],
  ['dust', plainPanel('dust', { size: { widthMm: 0.1, heightMm: 0.1 } })],
]);

describe('latticeCeiling', () => {
  it('clips the lattice of the turned panel', () => {
    const laid = latticeCeiling(plainCeiling({ panelId: 'tall', turnDeg: 90 }), shapes, 100);
    // 1000 x 500 over 2000 x 1500: two across, three along.
    expect(laid).toMatchObject({
      type: { widthMm: 1000, heightMm: 500, pixelsWide: 200, pixelsHigh: 100 },
      clipped: { columns: 2, rows: 3, count: 6 },
    });
  });

  it('says why there are no panels', () => {
    expect(latticeCeiling(plainCeiling({ panelId: 'gone' }), shapes, 100)).toEqual({ kind: 'panel-missing' });
    const small = { kind: 'circle' as const, diameterMm: 100 };
    expect(latticeCeiling(plainCeiling({ outline: small }), shapes, 100)).toEqual({ kind: 'no-panels' });
    expect(latticeCeiling(plainCeiling(), shapes, 11)).toEqual({ kind: 'too-many-panels', panels: 12, left: 11 });
    expect(latticeCeiling(plainCeiling({ panelId: 'dust' }), shapes, 100)).toEqual({
      kind: 'too-many-panels',
      panels: null,
      left: 100,
    });
  });

  it('takes as many panels as are left', () => {
    expect(latticeCeiling(plainCeiling(), shapes, 12)).toMatchObject({ clipped: { count: 12 } });
  });

  it('refuses more columns than a table counts', () => {
    const row = { kind: 'rectangle' as const, widthMm: 7000, depthMm: 0.1 };
    const place = { ...plainCeiling().place, centredAlong: true };
    expect(latticeCeiling(plainCeiling({ panelId: 'dust', outline: row, place }), shapes, 250_000)).toEqual({
      kind: 'too-many-panels',
      panels: 70_000,
      left: 250_000,
    });
  });
});
