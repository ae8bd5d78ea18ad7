import { describe, expect, it } from 'vitest';
import { wallFaults } from '../../../src/calc/walls/wall-fault';
import { plainPanel } from '../panels/plain-panel';
import { plainSegment, plainWall } from './plain-wall';

const shapes = new Map([
  ['p1', plainPanel('p1')],
  ['wide', plainPanel('wide', { size: { widthMm: 600 } })],
  ['tall', plainPanel('tall', { size: { heightMm: 1000 } })],
]);
const bands = (...panels: [string, 0 | 90][]) =>
  panels.map(([panelId, turnDeg], i) => ({ id: `b${i}`, panelId, rows: 1, turnDeg }));

describe('wallFaults', () => {
  it('finds none in a wall that can be laid out', () => {
    expect(wallFaults([plainWall(10, 0), plainWall(3, 2.5)], shapes)).toEqual([null, null]);
  });

  it('names the bands whose panel is not there', () => {
    const wall = plainWall(10, 0, 1, { bands: bands(['p1', 0], ['gone', 0], ['lost', 0]) });
    expect(wallFaults([wall], shapes)).toEqual([{ kind: 'panel-missing', bands: [1, 2] }]);
  });

  it('names the bands that are not as wide as the lowest, after their turn', () => {
    const wall = plainWall(10, 0, 1, { bands: bands(['p1', 0], ['tall', 0], ['wide', 0], ['tall', 90]) });
    expect(wallFaults([wall], shapes)).toEqual([{ kind: 'widths-differ', bands: [2, 3], widthMm: 600, firstMm: 500 }]);
  });

  it('shares 250,000 panels between the walls, first come first served', () => {
    const half = plainWall(1250, 0, 100);
    expect(wallFaults([half, half], shapes)).toEqual([null, null]);
    expect(wallFaults([half, half, plainWall(1, 0)], shapes)).toEqual([
      null,
      null,
      { kind: 'too-many-panels', panels: 1, left: 0 },
    ]);
    // A wall that is refused takes nothing from those after it.
    expect(wallFaults([plainWall(5000, 0, 51), half], shapes)).toEqual([
      { kind: 'too-many-panels', panels: 255_000, left: 250_000 },
      null,
    ]);
  });

  it('refuses more columns than a table counts', () => {
    const path = Array.from({ length: 14 }, (_, i) => plainSegment(`s${i}`, 5000, 0));
    expect(wallFaults([plainWall(1, 0, 1, { path })], shapes)).toEqual([{ kind: 'too-many-columns', columns: 70_000 }]);
  });
});
