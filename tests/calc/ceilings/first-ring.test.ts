import { describe, expect, it } from 'vitest';
import { firstRing } from '../../../src/calc/ceilings/first-ring';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from '../walls/plain-wall';

const walls = (...made: ReturnType<typeof plainWall>[]) => layOutWalls(made, [plainPanel('p1')]).walls;

describe('firstRing', () => {
  it('takes the first wall that closes round a middle', () => {
    const ring = firstRing(walls(plainWall(10, 0), plainWall(80, 2.5, 1, { id: 'arc' }), plainWall(144, 2.5)))!;
    expect(ring.wallId).toBe('arc');
    expect(ring.radiusMm).toBeCloseTo(11457.337793621136, 5);
    expect(ring.centre.xMm).toBeCloseTo(0, 6);
  });

  it('takes no flat wall, no shallow arc and no drum seen from outside', () => {
    expect(firstRing(walls(plainWall(10, 0), plainWall(20, 2.5), plainWall(36, -10)))).toBeNull();
    expect(firstRing([])).toBeNull();
  });
});
