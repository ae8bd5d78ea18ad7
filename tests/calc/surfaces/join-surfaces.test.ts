import { describe, expect, it } from 'vitest';
import { layOutCeilings } from '../../../src/calc/ceilings/lay-out-ceilings';
import { joinSurfaces } from '../../../src/calc/surfaces/join-surfaces';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { plainCeiling } from '../ceilings/plain-ceiling';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from '../walls/plain-wall';

const panels = [plainPanel('p1')];

describe('joinSurfaces', () => {
  it('numbers walls before ceilings and never passes 250,000 panels', () => {
    const walls = layOutWalls([plainWall(2000, 0, 100), plainWall(499, 0, 100), plainWall(400, 0, 1)], panels);
    const wide = plainCeiling({ outline: { kind: 'rectangle', widthMm: 5000, depthMm: 5500 } });
    const set = joinSurfaces(walls, layOutCeilings([wide, plainCeiling()], panels, walls));
    // The third wall would pass it (249,900 + 400); of what is left, 100, the first ceiling (110) is too large too.
    expect(set.surfaces.map((surface) => surface.count)).toEqual([200_000, 49_900, 0, 0, 12]);
    expect(set.offsets).toEqual([0, 200_000, 249_900, 249_900, 249_900]);
    expect(set.total).toBe(249_912);
  });

  it('is empty without surfaces', () => {
    expect(joinSurfaces({ walls: [] }, { ceilings: [] })).toEqual({ surfaces: [], offsets: [], total: 0 });
  });
});
