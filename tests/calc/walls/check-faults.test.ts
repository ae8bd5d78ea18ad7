import { describe, expect, it } from 'vitest';
import { checkFaults } from '../../../src/calc/walls/check-faults';
import { plainPanel } from '../panels/plain-panel';
import { plainSegment, plainWall } from './plain-wall';

const shapes = new Map([
  ['p1', plainPanel('p1')],
  ['wide', plainPanel('wide', { size: { widthMm: 600 } })],
]);
const band = (id: string, panelId: string) => ({ id, panelId, rows: 1, turnDeg: 0 as const });

describe('checkFaults', () => {
  it('has nothing to say of walls that can be laid out', () => {
    expect(checkFaults([plainWall(10, 2.5, 3)], shapes)).toEqual([]);
  });

  it('stops at a panel that is not there, and names the field', () => {
    const wall = plainWall(10, 0, 1, { bands: [band('a', 'p1'), band('b', 'gone')] });
    expect(checkFaults([plainWall(1, 0), wall], shapes)).toMatchObject([
      {
        id: 'walls.panel-missing.A',
        severity: 'stop',
        measured: 1,
        where: [
          { kind: 'surface', name: 'A' },
          { kind: 'field', name: 'walls[1].bands[1].panelId' },
        ],
      },
    ]);
  });

  it('stops at bands of unlike widths with both widths', () => {
    const wall = plainWall(10, 0, 1, { bands: [band('a', 'p1'), band('b', 'wide')] });
    expect(checkFaults([wall], shapes)).toMatchObject([
      { id: 'walls.widths.A', measured: 600, limit: 500, unit: 'mm' },
    ]);
  });

  it('stops at more panels or columns than there may be', () => {
    expect(checkFaults([plainWall(5000, 0, 60)], shapes)).toMatchObject([
      { id: 'walls.too-many.A', measured: 300_000, limit: 250_000 },
    ]);
    const path = Array.from({ length: 14 }, (_, i) => plainSegment(`s${i}`, 5000, 0));
    expect(checkFaults([plainWall(1, 0, 1, { path })], shapes)).toMatchObject([
      { id: 'walls.too-many.A', measured: 70_000, limit: 65_535 },
    ]);
  });
});
