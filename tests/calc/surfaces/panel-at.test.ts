import { describe, expect, it } from 'vitest';
import { joinSurfaces } from '../../../src/calc/surfaces/join-surfaces';
import { panelAt, panelName } from '../../../src/calc/surfaces/panel-at';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from '../walls/plain-wall';

const panels = [plainPanel('p1')];
const one = joinSurfaces(layOutWalls([plainWall(3, 0, 2)], panels), { ceilings: [] });
const two = joinSurfaces(layOutWalls([plainWall(3, 0, 2), plainWall(2, 0, 2, { id: 'b', letter: 'B' })], panels), {
  ceilings: [],
});

describe('panelAt', () => {
  it('finds the surface that a number falls on', () => {
    expect(panelAt(two, 5)).toMatchObject({ index: 5, name: 'A C3 R2', column: 3, row: 2 });
    expect(panelAt(two, 6)).toMatchObject({ index: 6, name: 'B C1 R1', column: 1, row: 1 });
    expect(panelAt(two, 9)!.surface.letter).toBe('B');
    expect(panelAt(two, 9)!.type.panelId).toBe('p1');
  });

  it('gives null for a number that no panel has', () => {
    for (const index of [-1, 10, 1.5, Number.NaN]) expect(panelAt(two, index)).toBeNull();
  });
});

describe('panelName', () => {
  it('drops the letter where there is one surface only', () => {
    expect(panelName(one, one.surfaces[0]!, 3, 2)).toBe('C3 R2');
    expect(panelName(two, two.surfaces[1]!, 1, 2)).toBe('B C1 R2');
  });
});
