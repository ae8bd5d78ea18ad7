import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeMasses, platePressureKpa } from '../../../src/calc/masses/compute-masses';
import { massesInputs, massPanel } from '../../arbitraries/masses-inputs';
import { surfaceOf, surfaceSet, surfaceSetArbitrary } from '../../arbitraries/power-surfaces';

describe('computeMasses', () => {
  it('adds fittings by area to every column: 4 x 8 kg + 1 m2 x 4 kg', () => {
    const results = computeMasses(massesInputs());
    expect(results.surfaces[0]).toMatchObject({ panelsKg: 160, fittingsKg: 20, totalKg: 180, heaviestColumnKg: 36 });
    expect([...results.surfaces[0]!.columnKg]).toEqual([36, 36, 36, 36, 36]);
    expect(results.totalKg).toBe(180);
  });

  it('puts two columns on a frame: 72 kg on 0.25 m2 press with 2.824 kPa (by hand: 72 x 9.80665 / 250)', () => {
    const [wall] = computeMasses(massesInputs()).surfaces;
    expect(wall!.frameKg).toBe(72);
    expect(wall!.floorKpa).toBeCloseTo(2.8243, 4);
  });

  it('knows no frame under what hangs: a hanging wall, a ceiling', () => {
    const hanging = computeMasses(massesInputs({ walls: [{ id: 'wall-1', support: 'hangs' }] })).surfaces[0];
    const ceiling = computeMasses(massesInputs({ walls: [] })).surfaces[0];
    for (const surface of [hanging, ceiling])
      expect(surface).toMatchObject({ totalKg: 180, frameKg: null, floorKpa: null });
  });

  it('weighs bands by their own panel, and leaves holes out', () => {
    const table = surfaceOf({
      columns: 2,
      rows: 3,
      rowPanel: (r) => (r === 3 ? 'q' : 'p'),
      holds: (c, r) => c === 1 || r > 1,
    });
    const results = computeMasses(
      massesInputs(
        { surfaces: surfaceSet(table), panels: [massPanel('p', 8), massPanel('q', 5)] },
        { fittingsKgPerM2: 0 },
      ),
    );
    expect([...results.surfaces[0]!.columnKg]).toEqual([21, 13]);
  });

  it('columns make the surface, surfaces the stage, whatever stands there', () => {
    fc.assert(
      fc.property(surfaceSetArbitrary, fc.integer({ min: 1, max: 9 }), (surfaces, columnsAFrame) => {
        const panels = [massPanel('p', 7.3), massPanel('q', 11.9)];
        const results = computeMasses(massesInputs({ surfaces, panels }, { columnsAFrame }));
        for (const surface of results.surfaces) {
          expect(surface.columnKg.reduce((a, b) => a + b, 0)).toBeCloseTo(surface.totalKg, 6);
        }
        expect(results.surfaces.reduce((sum, s) => sum + s.totalKg, 0)).toBeCloseTo(results.totalKg, 6);
      }),
    );
  });

  it('platePressureKpa: 100 kg on 1 m2 press with 0.980665 kPa (CGPM 1901)', () => {
    expect(platePressureKpa(100, 1)).toBeCloseTo(0.980665, 12);
  });
});
