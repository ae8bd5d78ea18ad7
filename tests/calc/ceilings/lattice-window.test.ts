import { describe, expect, it } from 'vitest';
import { toHalves } from '../../../src/calc/ceilings/lattice';
import { windowOver } from '../../../src/calc/ceilings/lattice-window';

const square = (stepMm: number, startMm = 0) => ({
  stepU: toHalves(stepMm),
  stepV: toHalves(stepMm),
  startU: toHalves(startMm),
  startV: toHalves(startMm),
});

describe('windowOver', () => {
  it('counts exact multiples exactly, where a float division with a floor loses one', () => {
    // Habit 9 of the examples read: with modules of 0.9 m and 0.64 m a floor of a float division loses panels.
    const wrong = [0.9, 0.64].map((m) => Array.from({ length: 100 }, (_, n) => Math.floor(((n + 1) * m) / m) < n + 1));
    expect(wrong.flat().some(Boolean)).toBe(true);
    for (const stepMm of [900, 640, 0.9, 0.64, 609.6]) {
      for (let n = 1; n <= 100; n++) {
        const to = n * toHalves(stepMm);
        const window = windowOver(square(stepMm), { fromU: 0, toU: to, fromV: -to, toV: to });
        expect(window, `${n} of ${stepMm} mm`).toEqual({ firstI: 0, firstJ: -n, columns: n, rows: 2 * n });
      }
    }
  });

  it('takes a place that the rectangle only just reaches into, and none that it touches', () => {
    const bounds = { fromU: 0, toU: 2001, fromV: -1, toV: 0 };
    expect(windowOver(square(1), bounds)).toEqual({ firstI: 0, firstJ: -1, columns: 2, rows: 1 });
    expect(windowOver(square(1), { ...bounds, toU: 2000 })).toMatchObject({ columns: 1 });
  });

  it('counts from a start that is off the origin', () => {
    // Places of 500 from -250: -250..250, 250..750; the rectangle -300..300 reaches into three.
    const bounds = { fromU: toHalves(-300), toU: toHalves(300), fromV: toHalves(0), toV: toHalves(10) };
    expect(windowOver(square(500, -250), bounds)).toEqual({ firstI: -1, firstJ: 0, columns: 3, rows: 1 });
  });

  it('has no place for a rectangle of no width on a line of the lattice', () => {
    expect(windowOver(square(1), { fromU: 2000, toU: 2000, fromV: 0, toV: 1 }).columns).toBe(0);
  });
});
