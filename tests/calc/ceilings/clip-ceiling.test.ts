import { describe, expect, it } from 'vitest';
import { type ClippedLattice, clipCeiling } from '../../../src/calc/ceilings/clip-ceiling';
import { latticeOf } from '../../../src/calc/ceilings/lattice';
import { placedPanelType } from '../../../src/calc/surfaces/placed-panel-type';
import type { Ceiling } from '../../../src/plan/ceiling';
import { plainPanel } from '../panels/plain-panel';
import { plainCeiling } from './plain-ceiling';

const centred = { xMm: 0, yMm: 0, turnDeg: 0, centredAcross: true, centredAlong: true };
const clip = (more: Partial<Ceiling>, size = {}) => {
  const ceiling = plainCeiling(more);
  return clipCeiling(ceiling, latticeOf(ceiling.place, placedPanelType(plainPanel('p1', { size }), ceiling.turnDeg)));
};
const drawn = ({ columns, rows, kept }: ClippedLattice) =>
  Array.from({ length: rows }, (_, fromTop) =>
    Array.from({ length: columns }, (__, i) => (kept[i * rows + rows - 1 - fromTop] === 1 ? '#' : '.')).join(''),
  );

describe('clipCeiling', () => {
  it('keeps a rectangle that is whole in panels, alike under every rule', () => {
    for (const rule of ['whole', 'centre', 'any'] as const) {
      expect(clip({ rule })).toMatchObject({ firstI: -2, firstJ: -1, columns: 4, rows: 3, count: 12 });
    }
  });

  it('counts modules of 0.9 m and 0.64 m exactly, one to a hundred across', () => {
    for (const widthMm of [900, 640]) {
      for (let n = 1; n <= 100; n++) {
        const outline = { kind: 'rectangle' as const, widthMm: n * widthMm, depthMm: 500 };
        const place = { ...centred, centredAcross: n % 2 === 1 };
        for (const rule of ['whole', 'any'] as const)
          expect(clip({ outline, place, rule }, { widthMm })!.count).toBe(n);
      }
    }
  });

  it('keeps by rule what a rectangle cuts', () => {
    // Centred lattice, 1200 across: places -750..-250, -250..250, 250..750 against -600..600; centres at -500, 0, 500.
    const outline = { kind: 'rectangle' as const, widthMm: 1200, depthMm: 500 };
    expect(clip({ outline, place: centred, rule: 'whole' })!.count).toBe(1);
    expect(clip({ outline, place: centred, rule: 'centre' })!.count).toBe(3);
    expect(clip({ outline, place: centred, rule: 'any' })!.count).toBe(3);
    const narrow = { ...outline, widthMm: 1000 };
    // Centres at -500 and 500 lie on the outline: inside.
    expect(clip({ outline: narrow, place: centred, rule: 'centre' })!.count).toBe(3);
    expect(clip({ outline: { ...narrow, widthMm: 999.998 }, place: centred, rule: 'centre' })!.count).toBe(1);
  });

  it('keeps the panels of a disc by rule, worked by hand', () => {
    // Corner at the origin, panels of 500, radius 1250. Farthest corners, in panels: 1,1 2,1 2,2 (2.83) against 2.5:
    // whole: (1,1), (1,2), (2,1) a quarter: 12. Centres 0.5,0.5 .. 1.5,1.5 (2.12) and 2.5,0.5 (2.55): 16.
    // Nearest corners 2,0 and 2,1 (2.24) inside, 2,2 (2.83) not: 2 more each way a quarter: 4 + 4 = 8 a quarter: 32.
    const place = { ...centred, centredAcross: false, centredAlong: false };
    const outline = { kind: 'circle' as const, diameterMm: 2500 };
    expect(clip({ outline, place, rule: 'whole' })!.count).toBe(12);
    expect(clip({ outline, place, rule: 'centre' })!.count).toBe(16);
    expect(clip({ outline, place, rule: 'any' })!.count).toBe(32);
  });

  it('keeps a panel whose corner lies on the circle, and none that only touches it from outside', () => {
    // 3-4-5: panels of 600 x 800 with a corner at the origin, radius 1000.
    const place = { ...centred, centredAcross: false, centredAlong: false };
    const outline = { kind: 'circle' as const, diameterMm: 2000 };
    const size = { widthMm: 600, heightMm: 800 };
    expect(clip({ outline, place, rule: 'whole' }, size)!.count).toBe(4);
    expect(clip({ outline: { ...outline, diameterMm: 1999.999 }, place, rule: 'whole' }, size)!.count).toBe(0);
    // The next place out begins where the circle passes: it touches, and no part of it is inside. Its neighbours are cut.
    expect(clip({ outline, place, rule: 'any' }, size)!.count).toBe(12);
    expect(clip({ outline: { ...outline, diameterMm: 2000.002 }, place, rule: 'any' }, size)!.count).toBe(16);
  });

  it('takes away every panel that reaches into a hole, whatever the rule, and none that touches it', () => {
    // Seen from below, its own +x is on the left: the hole from 500 to 600 lies over the leftmost of four columns.
    const hole = { id: 'h', name: 'Hatch', xMm: 500, yMm: -250, widthMm: 100, depthMm: 500 };
    expect(drawn(clip({ holes: [hole] })!)).toEqual(['####', '.###', '####']);
    expect(drawn(clip({ holes: [{ ...hole, xMm: 499, widthMm: 2 }] })!)).toEqual(['####', '..##', '####']);
    expect(clip({ holes: [{ ...hole, xMm: 1000 }] })!.count).toBe(12);
  });

  it('trims to the columns and rows that hold panels', () => {
    const hole = { id: 'h', name: 'Hatch', xMm: 500, yMm: -750, widthMm: 500, depthMm: 1500 };
    expect(clip({ holes: [hole] })).toMatchObject({ firstI: -1, columns: 3, rows: 3, count: 9 });
    expect(clip({ holes: [{ ...hole, xMm: -1000, widthMm: 2000 }] })).toMatchObject({ columns: 0, rows: 0, count: 0 });
  });

  it('keeps its lattice where it is when the outline grows', () => {
    const small = clip({})!;
    const large = clip({ outline: { kind: 'rectangle', widthMm: 3000, depthMm: 2500 } })!;
    expect(large).toMatchObject({ firstI: -3, firstJ: -2, columns: 6, rows: 5 });
    // The same place of the lattice, (0, 0), lies in both.
    expect(small.firstI + 2).toBe(0);
    expect(large.firstI + 3).toBe(0);
  });

  it('gives up a lattice of more than a million places', () => {
    expect(clip({ outline: { kind: 'circle', diameterMm: 1e5 } }, { widthMm: 0.1, heightMm: 0.1 })).toBeNull();
  });

  it('clips a polygon in its own axes: what it keeps on +x stands on the left from below', () => {
    const points = [
      [0, 0],
      [1500, 0],
      [0, 1500],
    ].map(([xMm, yMm]) => ({ xMm: xMm!, yMm: yMm! }));
    const place = { ...centred, centredAcross: false, centredAlong: false };
    expect(drawn(clip({ outline: { kind: 'polygon', points }, place, rule: 'any' })!)).toEqual(['..#', '.##', '###']);
  });
});
