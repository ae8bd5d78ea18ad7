import { describe, expect, it } from 'vitest';
import { holeWindow } from '../../../src/calc/ceilings/hole-window';
import { toHalves } from '../../../src/calc/ceilings/lattice';

const lattice = { startU: 0, startV: 0, stepU: toHalves(500), stepV: toHalves(500) };

describe('holeWindow', () => {
  it('begins at the corner of least x and y, mirrored as seen from below', () => {
    // x 500..1000 is u -1000..-500: the place -2; y 250..750 reaches into the places 0 and 1.
    const hole = { id: 'h', name: 'Hatch', xMm: 500, yMm: 250, widthMm: 500, depthMm: 500 };
    expect(holeWindow(hole, lattice)).toEqual({ firstI: -2, firstJ: 0, columns: 1, rows: 2 });
  });
});
