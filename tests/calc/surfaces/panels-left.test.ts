import { describe, expect, it } from 'vitest';
import { panelsLeft } from '../../../src/calc/surfaces/panels-left';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from '../walls/plain-wall';

describe('panelsLeft', () => {
  it('is 250,000 less the panels of the walls, holes not counted', () => {
    const holes = [{ id: 'h', name: 'Door', segmentId: 's1', column: 1, row: 1, columns: 2, rows: 2 }];
    const walls = layOutWalls([plainWall(10, 0, 3, { holes }), plainWall(5, 0, 2)], [plainPanel('p1')]);
    expect(panelsLeft(walls)).toBe(250_000 - 26 - 10);
    expect(panelsLeft({ walls: [] })).toBe(250_000);
  });
});
